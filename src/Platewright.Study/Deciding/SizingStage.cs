using System.Security.Cryptography;
using System.Text.Json;
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
internal sealed class SizingStage(StageRunner runner)
{
    /// <param name="study">The study.</param>
    /// <param name="beside">The same work on the bundled machines that it does not list.</param>
    /// <param name="progress">Hears how it goes.</param>
    /// <param name="cancel">Stops the work.</param>
    /// <returns>Without its sheet; null where there is no project.</returns>
    public SizingDocument? Run(JudgedStudy study, JudgedStudy beside, IProgressListener progress, CancellationToken cancel)
    {
        if (!study.Work.Any()) return null;
        IReadOnlyList<(string Name, int CanMake)> bundled = Bundled(study, beside);
        SizingCase c = SizingCases.Of(study);
        Dictionary<string, string> names = study.Projects.SelectMany(p => p.Parts).ToDictionary(p => p.Id, p => p.Part.Name, StringComparer.Ordinal);
        progress.Begin("Sizing", 1);
        SizingDocument document = runner.Run(
            Stage.Size, [KeyOf(c, study.Plan.Sizing, bundled, names)], "", StoredJson.Default.SizingDocument,
            () => new SizingDescription(SizingAnswer.Of(c, cancel), study.Plan.Sizing, names).Describe(bundled));
        progress.Advance("the whole work");
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
            c.Heats,
            plan,
            bundled = bundled.Select(b => new { b.Name, b.CanMake }),
            names,
        });
        text.Position = 0;
        return Convert.ToHexStringLower(SHA256.HashData(text));
    }

    /// <summary>All bundled machines from the smallest, each with how many projects it can make, whether or not the study lists it.</summary>
    private static IReadOnlyList<(string Name, int CanMake)> Bundled(JudgedStudy study, JudgedStudy beside) =>
    [
        .. study.Machines.Where(m => MachineCatalog.Bundled.Any(b => b == m)).Select(m => (Machine: m, From: study))
            .Concat(beside.Machines.Select(m => (Machine: m, From: beside)))
            .OrderBy(x => UsableVolume.EdgeMm(x.Machine))
            .Select(x => (x.Machine.Name, x.From.Work.Count(p => p.Verdicts[x.From.Machines.IndexOf(x.Machine)].CanMake))),
    ];
}
