using System.Collections.Immutable;
using Platewright.Fit;
using Platewright.Machines;
using Platewright.Sizing;
using Platewright.Study.Deciding;
using Platewright.Study.Documents;
using Platewright.Study.Pipeline;

namespace Platewright.Study.Judgement;

/// <summary>A part with its fit on every machine and what it needs.</summary>
/// <param name="Fits">One for each machine, in order.</param>
/// <param name="Estimates">One for each machine, null where there is none.</param>
internal sealed record StudiedPart(
    StudyPart Part, IReadOnlyList<JudgedFit> Fits, PartNeed Need, IReadOnlyList<PartEstimateDocument?> Estimates)
{
    public string Id => Part.Id;

    public string? AnyOf => Part.Planned.AnyOf;
}

/// <summary>A project with its verdict on every machine. A project of which no part could be used is not among them.</summary>
/// <param name="Missing">How many of its planned parts could not be used.</param>
internal sealed record StudiedProject(
    string Id, PlannedProject Planned, IReadOnlyList<StudiedPart> Parts, IReadOnlyList<ProjectVerdict> Verdicts, int Missing)
{
    /// <summary>
    /// As its size is judged: by the parts that could be used. What is missing could only need more, and the notes say so.
    /// </summary>
    public SizedProject Sized => new(Id, [.. Parts.Select(p => new SizedPart(p.Id, p.AnyOf, p.Need))]);

    /// <summary>The project exists only as a wish: it or all of its parts are wanted.</summary>
    public bool Wanted => Planned.Wanted || Parts.All(p => p.Part.Examined is null);
}

/// <summary>Parts and projects with everything that is known of them on each machine.</summary>
internal sealed record JudgedStudy(StudyPlan Plan, IReadOnlyList<StudiedProject> Projects)
{
    public ImmutableArray<Machine> Machines => Plan.Machines;

    /// <summary>The projects that are work: not the printed parts of a machine, which are asked about for themselves.</summary>
    public IEnumerable<StudiedProject> Work => Projects.Where(p => p.Planned.Frequency.PrintedPartsOf is null);

    /// <summary>Projects in all the work: those here where they are all, else what the file says; null where it does not.</summary>
    public int? Population => Plan.Sizing.Work.Sample ? Plan.Sizing.Work.Population : Work.Count();

    public static JudgedStudy Of(
        StudyPlan plan, StudyWork work, IReadOnlyList<Fitting> fittings,
        IReadOnlyList<IReadOnlyList<PartEstimateDocument?>>? estimates)
    {
        PlaceRules place = new(plan.Sizing);
        StudiedPart[] parts =
        [
            .. work.Parts.Select((part, i) =>
            {
                IReadOnlyList<PartEstimateDocument?> known = estimates?[i] ?? [.. plan.Machines.Select(_ => (PartEstimateDocument?)null)];
                return new StudiedPart(
                    part,
                    [
                        .. fittings[i].Fits.Select((f, m) => JudgedFit.Of(
                            f, plan.Machines[m], part.Material, part.Examined?.ThinnestWallMm, plan.Options.BeadWidthMm,
                            place.Against(plan.Machines[m], part.Material, known[m]))),
                    ],
                    NeedOf(part, fittings[i].Need),
                    known);
            }),
        ];
        return new JudgedStudy(plan,
        [
            .. parts.GroupBy(p => p.Part.Project).Select(g => Project(plan, g.Key, [.. g], work.Missing[g.Key])),
        ]);
    }

    private static StudiedProject Project(StudyPlan plan, int index, StudiedPart[] parts, int missing) =>
        new(
            $"p{index + 1}", plan.Projects[index], parts,
            [
                .. Enumerable.Range(0, plan.Machines.Length).Select(m => ProjectVerdict.Of(
                    [.. parts.Select(p => new JudgedPart(p.Id, p.Part.Name, p.AnyOf, p.Need.CubeAcceptedMm, p.Fits[m]))])),
            ],
            missing);

    private static PartNeed NeedOf(StudyPart part, SizeNeed size) => PartNeed.Of(
        size, part.SizeMm * (1 + part.Shrinkage), part.Planned.Allowance, part.Material?.Needs, part.Examined?.ThinnestWallMm,
        part.BrimMm);
}
