using System.Collections.Immutable;
using Platewright.Formats.Toml;
using Platewright.Machines;

namespace Platewright.Study;

/// <summary>
/// Plans a study: from its TOML file (docs/study-file.md says what it may hold) or from a plain folder.
/// </summary>
public static class StudyFile
{
    private static readonly NumberRange BeadWidth = NumberRange.Positive(10, "mm");

    private static readonly NumberRange Tight = new(0, 100, "mm");

    private static readonly NumberRange Tolerance = new(1e-9, 0.01);

    private static readonly NumberRange Confidence = new(0.5, 0.9999);

    /// <summary>Reads a study file.</summary>
    /// <param name="path">The file; paths in it start from its folder.</param>
    /// <param name="listModels">Full paths of the model files in and below a folder, given in full.</param>
    /// <exception cref="DescriptionException">Each thing wrong with its line, its key and what was
    /// expected.</exception>
    public static StudyPlan Read(string path, Func<string, IReadOnlyList<string>> listModels)
    {
        string folder = Path.GetDirectoryName(Path.GetFullPath(path))!;
        return TomlFile.Read(path, root => Read(root, folder, Path.GetFileNameWithoutExtension(path), listModels));
    }

    /// <summary>Reads the text of a study file.</summary>
    /// <param name="text">The text.</param>
    /// <param name="file">How errors name it.</param>
    /// <param name="folder">Full path of the folder that its paths start from.</param>
    /// <param name="listModels">Full paths of the model files in and below a folder, given in full.</param>
    /// <exception cref="DescriptionException">Each thing wrong with its line, its key and what was
    /// expected.</exception>
    public static StudyPlan Parse(string text, string file, string folder, Func<string, IReadOnlyList<string>> listModels) =>
        TomlFile.Parse(text, file, root => Read(root, folder, Path.GetFileNameWithoutExtension(file), listModels));

    /// <summary>
    /// The study of a plain folder: all bundled machines, every loose file and every sub-folder a project.
    /// </summary>
    /// <param name="path">The folder.</param>
    /// <param name="modelFiles">Full paths of the model files in and below it, in any order; at least one.</param>
    /// <exception cref="DescriptionException">There is no model file.</exception>
    public static StudyPlan ForFolder(string path, IReadOnlyList<string> modelFiles)
    {
        string folder = Path.GetFullPath(path);
        string name = Path.GetFileName(Path.TrimEndingDirectorySeparator(folder));
        if (modelFiles.Count == 0)
        {
            string named = path.Replace('\\', '/');
            throw new DescriptionException(new DescriptionError("the folder holds no model files.", named));
        }
        var projects = FolderProjects.Of(folder, folder, modelFiles, new PartDefaults(), null);
        return new StudyPlan(
            name.Length > 0 ? name : "study", null, folder, MachineCatalog.Bundled, new StudyOptions(), [], projects,
            SizingPlan.Unsaid);
    }

    private static StudyPlan Read(
        TomlTable root, string folder, string fileName, Func<string, IReadOnlyList<string>> listModels)
    {
        string name = root.Text("name") ?? fileName;
        string? note = root.Text("note");
        ImmutableArray<Material> materials = MaterialReader.Read(root.Tables("material"));
        ImmutableArray<Machine> machines = MachineListReader.Read(root, folder);
        PartDefaults defaults = new PartDefaults { Folder = folder }.WithAllowance(root);
        StudyOptions options = Options(root) with { LeastScale = defaults.Allowance.LeastScale };
        if (root.Table("defaults") is { } table) defaults = defaults.WithMaking(table, materials);
        ProjectReader reader = new(folder, materials, listModels);
        ImmutableArray<TomlTable> tables = root.Tables("project");
        ImmutableArray<PlannedProject> projects =
        [
            .. OfFolder(root, reader, folder, defaults, otherwiseHere: !root.Has("project"), listModels),
            .. tables.Select(t => reader.Read(t, defaults)).OfType<PlannedProject>(),
        ];
        RefuseSameNames(root, tables, projects);
        SizingPlan sizing = SizingReader.Read(root, tables, projects, machines);
        return new StudyPlan(name, note, folder, machines, options, materials, projects, sizing);
    }

    private static StudyOptions Options(TomlTable root)
    {
        StudyOptions usual = new();
        return usual with
        {
            BeadWidthMm = root.Number("bead_width_mm", BeadWidth) ?? usual.BeadWidthMm,
            TightMm = root.Number("tight_mm", Tight) ?? usual.TightMm,
            Tolerance = root.Number("tolerance", Tolerance) ?? usual.Tolerance,
            Confidence = root.Number("confidence", Confidence) ?? usual.Confidence,
        };
    }

    private static ImmutableArray<PlannedProject> OfFolder(
        TomlTable root, ProjectReader reader, string folder, PartDefaults defaults, bool otherwiseHere,
        Func<string, IReadOnlyList<string>> listModels)
    {
        if (root.Has("folder"))
        {
            if (root.Text("folder") is not { } named) return [];
            string full = StudyPaths.Full(folder, named);
            return FolderProjects.Of(full, folder, reader.FilesOf(root), defaults, root.PlaceOf("folder"));
        }
        if (!otherwiseHere) return [];
        IReadOnlyList<string> files = listModels(folder);
        if (files.Count == 0)
            root.Refuse("nothing to study: no [[project]], no folder, and no model files beside the study file.");
        return FolderProjects.Of(folder, folder, files, defaults, null);
    }

    private static void RefuseSameNames(
        TomlTable root, ImmutableArray<TomlTable> tables, ImmutableArray<PlannedProject> projects)
    {
        HashSet<string> seen = new(StringComparer.OrdinalIgnoreCase);
        foreach (PlannedProject project in projects)
        {
            if (seen.Add(project.Name)) continue;
            TomlTable at = tables.FirstOrDefault(t => t.Place == project.Place) ?? root;
            at.Refuse("name", $"another project is already called \"{project.Name}\".");
        }
    }
}
