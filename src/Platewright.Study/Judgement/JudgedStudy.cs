using System.Collections.Immutable;
using Platewright.Fit;
using Platewright.Geometry;
using Platewright.Machines;
using Platewright.Study.Pipeline;

namespace Platewright.Study.Judgement;

/// <summary>A part with its fit on every machine and what it needs.</summary>
/// <param name="Index">Its place among all parts of the study.</param>
/// <param name="Fits">One for each machine, in order.</param>
internal sealed record StudiedPart(StudyPart Part, int Index, IReadOnlyList<JudgedFit> Fits, Need Need)
{
    public string Id => Part.Id;

    public string? AnyOf => Part.Planned.AnyOf;
}

/// <summary>A project with its verdict on every machine. A project of which no part could be used is not among them.</summary>
/// <param name="Missing">How many of its planned parts could not be used.</param>
internal sealed record StudiedProject(
    string Id, PlannedProject Planned, IReadOnlyList<StudiedPart> Parts, IReadOnlyList<ProjectVerdict> Verdicts, Need Need, int Missing)
{
    /// <summary>The project exists only as a wish: it or all of its parts are wanted.</summary>
    public bool Wanted => Planned.Wanted || Parts.All(p => p.Part.Examined is null);
}

/// <summary>Parts and projects with everything that is known of them on each machine.</summary>
internal sealed record JudgedStudy(StudyPlan Plan, IReadOnlyList<StudiedProject> Projects)
{
    public ImmutableArray<Machine> Machines => Plan.Machines;

    public static JudgedStudy Of(
        StudyPlan plan, StudyWork work, IReadOnlyList<Fitting> fittings)
    {
        StudiedPart[] parts =
        [
            .. work.Parts.Select((part, i) => new StudiedPart(
                part, i,
                [.. fittings[i].Fits.Select((f, m) => JudgedFit.Of(f, plan.Machines[m], part.Material, part.Examined?.ThinnestWallMm, plan.Options.BeadWidthMm))],
                Need.Of(fittings[i].Need, part.Planned.Allowance, AsDrawn(part)))),
        ];
        return new JudgedStudy(plan,
        [
            .. parts.GroupBy(p => p.Part.Project).Select(g => Project(plan, g.Key, [.. g], work.Missing[g.Key])),
        ]);
    }

    private static StudiedProject Project(StudyPlan plan, int index, StudiedPart[] parts, int missing)
    {
        StudiedPart[][] groups = AnyOf.Groups(parts, p => p.AnyOf, p => p.Id);
        return new StudiedProject(
            $"p{index + 1}", plan.Projects[index], parts,
            [
                .. Enumerable.Range(0, plan.Machines.Length).Select(m => ProjectVerdict.Of(
                    [.. parts.Select(p => new JudgedPart(p.Id, p.Part.Name, p.AnyOf, p.Need.LeastMm, p.Fits[m]))])),
            ],
            Need.All([.. groups.Select(g => Need.Any([.. g.Select(p => p.Need)]))]), missing);
    }

    private static BedAndHeight AsDrawn(StudyPart part)
    {
        Vec3 size = part.SizeMm * (1 + part.Shrinkage);
        return new BedAndHeight(Math.Max(size.X, size.Y), size.Z);
    }
}
