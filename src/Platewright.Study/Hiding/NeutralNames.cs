using System.Collections.Immutable;
using Platewright.Formats;
using Platewright.Machines;
using Platewright.Study.Examining;
using Platewright.Study.Pipeline;

namespace Platewright.Study.Hiding;

/// <summary>
/// A plan and its examined files under neutral names, before anything is judged or described: every sentence is then made of
/// neutral names, and none has to be searched for the others. Full paths stay, since meshes are read again by them; no document
/// shows one.
/// </summary>
internal static class NeutralNames
{
    private const string StudyName = "Shared study";

    /// <param name="plan">The plan.</param>
    /// <param name="found">Its files, examined.</param>
    /// <param name="notSearched">Folders that could not be searched.</param>
    public static (StudyPlan Plan, Dictionary<FileToExamine, Examination> Found, IReadOnlyList<UnusableFile> NotSearched) Of(
        StudyPlan plan, IReadOnlyDictionary<FileToExamine, Examination> found, IReadOnlyList<UnusableFile> notSearched)
    {
        Dictionary<string, int> numbers = NumbersOf(plan);
        Dictionary<FileToExamine, NeutralFile> files = found.ToDictionary(
            f => f.Key, f => NeutralFile.Of(numbers[f.Key.Path.Path], f.Key.Path, f.Value, plan.OwnMaterials));
        return (
            Named(plan, files),
            found.ToDictionary(f => f.Key with { Path = files[f.Key].Path }, f => files[f.Key].Found),
            [.. notSearched.Select((folder, i) => Folder(folder, i + 1))]);
    }

    // One file read in two ways is still one file.
    private static Dictionary<string, int> NumbersOf(StudyPlan plan)
    {
        Dictionary<string, int> numbers = new(StringComparer.Ordinal);
        foreach (string path in plan.Projects.SelectMany(p => p.Parts).Select(p => p.FullPath).OfType<string>())
            numbers.TryAdd(path, numbers.Count + 1);
        return numbers;
    }

    private static StudyPlan Named(StudyPlan plan, Dictionary<FileToExamine, NeutralFile> files)
    {
        Dictionary<string, string> projects = new(StringComparer.OrdinalIgnoreCase);
        for (int i = 0; i < plan.Projects.Length; i++) projects.TryAdd(plan.Projects[i].Name, $"Project {i + 1}");
        return plan with
        {
            Name = StudyName,
            Note = null,
            Machines = [.. plan.Machines.Select(WithoutNote)],
            Projects = [.. plan.Projects.Select((p, i) => Named(p, i + 1, plan.Options, files))],
            Sizing = plan.Sizing with
            {
                Orders = [.. plan.Sizing.Orders.Select(o => o with { Project = projects.GetValueOrDefault(o.Project, StudyName) })],
            },
        };
    }

    private static PlannedProject Named(
        PlannedProject project, int number, StudyOptions options, Dictionary<FileToExamine, NeutralFile> files)
    {
        string[] groups = [.. project.Parts.Select(p => p.AnyOf).OfType<string>().Distinct(StringComparer.Ordinal)];
        return project with
        {
            Name = $"Project {number}",
            Note = null,
            Parts = [.. project.Parts.Select((part, i) => Named(part, number, i + 1, groups, options, files))],
        };
    }

    private static PlannedPart Named(
        PlannedPart part, int project, int number, string[] groups, StudyOptions options,
        Dictionary<FileToExamine, NeutralFile> files)
    {
        NeutralFile? file = part.FullPath is null ? null : files[StudyWork.FileOf(part, options)];
        return part with
        {
            Name = $"Part {project}.{number}",
            Named = true,
            File = file?.Path.ShownAs,
            Object = part.Object is { } inside ? file?.ObjectNamed(inside) : null,
            AnyOf = part.AnyOf is { } group ? $"Choice {project}.{Array.IndexOf(groups, group) + 1}" : null,
        };
    }

    // The notes of the bundled machines are ours.
    private static Machine WithoutNote(Machine machine) => machine.Generic ? machine : machine with { Note = null };

    private static UnusableFile Folder(UnusableFile folder, int number)
    {
        string shown = $"folder {number}";
        return new UnusableFile(shown, null, NeutralText.Of(folder.Message, [(folder.File, shown)]));
    }
}
