using System.Collections.Immutable;
using Platewright.Formats.Toml;
using Platewright.Machines;

namespace Platewright.Study;

/// <summary>Reads the <c>[[project]]</c> tables and the folders they name.</summary>
internal sealed class ProjectReader(
    string folder, ImmutableArray<Material> ownMaterials, Func<string, IReadOnlyList<string>> listModels)
{
    private readonly PartReader _parts = new(folder, ownMaterials);

    public PlannedProject? Read(TomlTable table, PartDefaults defaults)
    {
        string? name = table.Text("name", required: true);
        string? note = table.Text("note");
        bool wanted = table.Flag("wanted") ?? false;
        Frequency frequency = FrequencyReader.Read(table);
        PartDefaults own = defaults.With(table, ownMaterials);
        TomlPlace place = table.PlaceOf("folder");
        List<PlannedPart> parts = [.. FilesOf(table).Select(f => FolderProjects.Part(f, folder, own, place))];
        bool anyPart = table.Has("part");
        foreach (TomlTable part in table.Tables("part"))
        {
            ImmutableArray<PlannedPart> read = _parts.Read(part, own);
            if (read is [{ AnyOf: { } group }, ..] && parts.Any(p => p.AnyOf == group))
                part.Refuse($"another group of alternatives of this project is called \"{group}\"; name it.");
            parts.AddRange(read);
        }
        if (!anyPart && !table.Has("folder"))
            table.Refuse("expected [[project.part]] or folder; the project has no parts.");
        return name is null
            ? null
            : new PlannedProject(name, note, wanted, [.. parts], table.Place) { Frequency = frequency };
    }

    /// <summary>
    /// Full paths of the model files of the table's <c>folder</c>; none, with an error, where there are none.
    /// </summary>
    public IReadOnlyList<string> FilesOf(TomlTable table)
    {
        if (table.Text("folder") is not { } named) return [];
        string full = StudyPaths.Full(folder, named);
        if (!Directory.Exists(full))
        {
            table.Refuse("folder", $"there is no folder \"{named}\" beside the study file.");
            return [];
        }
        IReadOnlyList<string> files = listModels(full);
        if (files.Count == 0) table.Refuse("folder", $"the folder \"{named}\" holds no model files.");
        return [.. files.Order(StringComparer.Ordinal)];
    }
}
