using Platewright.Formats;
using Platewright.Geometry;
using Platewright.Machines;
using Platewright.Study.Examining;

namespace Platewright.Study.Pipeline;

/// <summary>The planned parts joined with what their files turned out to hold.</summary>
/// <param name="Parts">In the order of the plan; a file of several objects gives several.</param>
/// <param name="Unusable">Files that gave none, each once.</param>
/// <param name="Missing">For each project, how many of its planned parts could not be used.</param>
internal sealed record StudyWork(
    IReadOnlyList<StudyPart> Parts, IReadOnlyList<UnusableFile> Unusable, IReadOnlyList<int> Missing)
{
    /// <summary>The files of a plan, each once for each way of reading it.</summary>
    public static IReadOnlyList<FileToExamine> FilesOf(StudyPlan plan) =>
    [
        .. plan.Projects.SelectMany(p => p.Parts).Where(p => p.FullPath is not null).Select(p => FileOf(p, plan.Options)).Distinct(),
    ];

    /// <param name="found">What <see cref="FilesOf"/> gave, examined.</param>
    /// <param name="notSearched">Folders that could not be searched.</param>
    public static StudyWork Of(
        StudyPlan plan, IReadOnlyDictionary<FileToExamine, Examination> found, IEnumerable<UnusableFile> notSearched)
    {
        List<StudyPart> parts = [];
        List<UnusableFile> unusable = [.. notSearched];
        int[] missing = new int[plan.Projects.Length];
        for (int project = 0; project < plan.Projects.Length; project++)
        {
            int number = 0;
            foreach (PlannedPart planned in plan.Projects[project].Parts)
            {
                StudyPart[] made = planned.DimensionsMm is { } size
                    ? [OfDimensions(project, planned, size)]
                    : [.. OfFile(project, planned, found[FileOf(planned, plan.Options)], plan.OwnMaterials, unusable)];
                if (made.Length == 0) missing[project]++;
                parts.AddRange(made.Select(p => p with { Id = $"p{project + 1}-{++number}" }));
            }
        }
        return new StudyWork(parts, [.. unusable.Distinct()], missing);
    }

    /// <summary>The same without some parts, which are listed as unusable.</summary>
    public StudyWork Without(IReadOnlyCollection<StudyPart> dropped, Func<StudyPart, UnusableFile> reason)
    {
        if (dropped.Count == 0) return this;
        return new StudyWork(
            [.. Parts.Where(p => !dropped.Contains(p))], [.. Unusable, .. dropped.Select(reason).Distinct()],
            [.. Missing.Select((m, project) => m + dropped.Count(p => p.Project == project))]);
    }

    /// <summary>How a part's file is read.</summary>
    public static ExamineOptions ReadingOf(PlannedPart part, StudyOptions options) =>
        ExamineOptions.Default with { Unit = part.Unit, Separate = part.Separate, BeadWidthMm = options.BeadWidthMm, ForStudy = true };

    /// <summary>A planned part's file and how to read it; the part has one.</summary>
    public static FileToExamine FileOf(PlannedPart part, StudyOptions options) =>
        new(new ModelPath(part.FullPath!, part.File!), ReadingOf(part, options));

    private static StudyPart OfDimensions(int project, PlannedPart planned, Vec3 size)
    {
        Vec3[] corners =
        [
            .. from x in new[] { 0, size.X } from y in new[] { 0, size.Y } from z in new[] { 0, size.Z } select new Vec3(x, y, z),
        ];
        byte[] hull = ExaminedPart.Packed(ConvexHull.Of(corners));
        return new StudyPart
        {
            Id = "",
            Name = planned.Name,
            Project = project,
            Planned = planned,
            Material = planned.Material,
            Hull = hull,
            ShapeKey = ExaminedPart.KeyOf(hull),
        };
    }

    private static IEnumerable<StudyPart> OfFile(
        int project, PlannedPart planned, Examination found, IEnumerable<Material> ownMaterials, List<UnusableFile> unusable)
    {
        unusable.AddRange(found.Unusable);
        ExaminedPart[] meant = [.. found.Parts.Where(p => planned.Object is null || p.Object == planned.Object)];
        if (meant.Length == 0 && found.Parts.Count > 0)
        {
            string held = string.Join(", ", found.Parts.Select(p => p.Object).OfType<string>().Distinct().DefaultIfEmpty("one without a name"));
            string message = $"{planned.File}: there is no object \"{planned.Object}\" in it; it holds {held}.";
            unusable.Add(new UnusableFile(planned.File!, null, message));
        }
        return meant.Select(part => new StudyPart
        {
            Id = "",
            Name = NameOf(planned, part, alone: meant.Length == 1),
            Project = project,
            Planned = planned,
            Examined = part,
            Material = planned.Material ?? (part.Material is { } named ? MaterialCatalog.Find(named, ownMaterials) : null),
            Hull = part.Hull,
            ShapeKey = part.ShapeKey,
        });
    }

    private static string NameOf(PlannedPart planned, ExaminedPart part, bool alone)
    {
        if (alone) return planned.Name;
        // A file in a pack has a name of its own below that of the pack.
        string? inside = part.File.Length > planned.File!.Length ? System.IO.Path.GetFileNameWithoutExtension(part.File) : null;
        return string.Join(" · ", new[] { planned.Name, inside, part.Object }.OfType<string>());
    }
}

/// <summary>A file and how to read it.</summary>
internal sealed record FileToExamine(ModelPath Path, ExamineOptions Options);
