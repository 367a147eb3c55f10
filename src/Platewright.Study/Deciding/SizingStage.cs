using System.Security.Cryptography;
using System.Text.Json;
using Platewright.Fit;
using Platewright.Machines;
using Platewright.Sizing.Answers;
using Platewright.Sizing.Cases;
using Platewright.Study.Describing;
using Platewright.Study.Documents;
using Platewright.Study.Judgement;
using Platewright.Study.Pipeline;
using Platewright.Study.Store;

namespace Platewright.Study.Deciding;

/// <summary>Sizing through the store: the same work, machines and assumptions give the same answer, which is then not looked for again.</summary>
internal sealed class SizingStage(StageRunner runner, FitOptions options)
{
    /// <returns>Without its sheet; null where there is no project.</returns>
    public SizingDocument? Run(JudgedStudy study, StudyWork work, IProgressListener progress, CancellationToken cancel)
    {
        if (!study.Work.Any()) return null;
        IReadOnlyList<(string Name, int CanMake)> bundled = Bundled(study, work, progress, cancel);
        SizingCase c = SizingCases.Of(study);
        Dictionary<string, string> names = study.Projects.SelectMany(p => p.Parts).ToDictionary(p => p.Id, p => p.Part.Name, StringComparer.Ordinal);
        progress.Begin("Sizing", 1);
        SizingDocument document = runner.Run(
            Stage.Size, [KeyOf(c, study.Plan.Sizing, bundled, names)], "", StoredJson.Default.SizingDocument,
            () => new SizingDescription(SizingAnswer.Of(c, cancel), study.Plan.Sizing, names).Describe(bundled));
        progress.Advance();
        return document;
    }

    /// <summary>Everything the answer follows from. The place is in the plan; its own object holds only what is made of that.</summary>
    private static string KeyOf(
        SizingCase c, SizingPlan plan, IReadOnlyList<(string Name, int CanMake)> bundled, IReadOnlyDictionary<string, string> names)
    {
        using MemoryStream text = new();
        JsonSerializer.Serialize(text, new
        {
            c.Machines,
            c.Projects,
            c.PrintedParts,
            c.Sized,
            c.Orders,
            c.SameMoney,
            c.Confidence,
            c.BeadWidthMm,
            plan,
            bundled = bundled.Select(b => new { b.Name, b.CanMake }),
            names,
        });
        text.Position = 0;
        return Convert.ToHexStringLower(SHA256.HashData(text));
    }

    /// <summary>All bundled machines from the smallest, each with how many projects it can make, whether or not the study lists it.</summary>
    private IReadOnlyList<(string Name, int CanMake)> Bundled(JudgedStudy study, StudyWork work, IProgressListener progress, CancellationToken cancel)
    {
        Machine[] others = [.. MachineCatalog.Bundled.Where(b => study.Machines.All(m => m != b))];
        JudgedStudy? judged = null;
        if (others.Length > 0)
        {
            (StudyWork fitted, IReadOnlyList<Fitting> fittings) = new FittingStage(runner, options).Run(work, others, progress, cancel);
            judged = JudgedStudy.Of(study.Plan with { Machines = [.. others] }, fitted, fittings, null);
        }
        return
        [
            .. MachineCatalog.Bundled.OrderBy(UsableVolume.EdgeMm).Select(b =>
            {
                bool listed = study.Machines.Any(m => m == b);
                JudgedStudy from = listed ? study : judged!;
                int at = from.Machines.ToList().FindIndex(m => m == b);
                return (b.Name, from.Work.Count(p => p.Verdicts[at].CanMake));
            }),
        ];
    }
}
