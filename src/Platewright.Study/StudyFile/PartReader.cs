using System.Collections.Immutable;
using System.Globalization;
using Platewright.Formats.Toml;
using Platewright.Geometry;
using Platewright.Machines;

namespace Platewright.Study;

/// <summary>Reads one <c>[[project.part]]</c>: a file, dimensions, or alternatives of which the best counts.</summary>
internal sealed class PartReader(string folder, ImmutableArray<Material> ownMaterials)
{
    private const int MostCopies = 100_000;

    private static readonly NumberRange Size = NumberRange.Positive(100_000, "mm");

    private static readonly string[] Sources = ["file", "dimensions_mm", "any_of"];

    /// <summary>One part, or all alternatives; none where an error was noted.</summary>
    public ImmutableArray<PlannedPart> Read(TomlTable table, PartDefaults defaults)
    {
        PartDefaults own = defaults.With(table, ownMaterials);
        int quantity = Quantity(table, 1);
        bool separate = table.Flag("separate") ?? false;
        if (!OneSource(table, Sources)) return [];
        if (!table.Has("any_of")) return One(table, own, quantity, separate) is { } part ? [part] : [];

        table.RefuseIfPresent("object", "names an object of a file; put it beside the file of the alternative.");
        ImmutableArray<TomlTable> choices = table.Tables("any_of");
        if (choices.Length < 2 && table.Entries["any_of"] is TomlList)
            table.Refuse("any_of", $"expected at least 2 alternatives, found {choices.Length}.");
        List<PlannedPart> parts = [];
        foreach (TomlTable choice in choices)
        {
            PartDefaults narrow = own.With(choice, ownMaterials);
            int copies = Quantity(choice, quantity);
            bool apart = choice.Flag("separate") ?? separate;
            if (!OneSource(choice, ["file", "dimensions_mm"])) continue;
            if (One(choice, narrow, copies, apart) is { } part) parts.Add(part);
        }
        string group = table.Text("name") ?? string.Join(" or ", parts.Select(p => p.Name));
        return [.. parts.Select(p => p with { AnyOf = group })];
    }

    private PlannedPart? One(TomlTable table, PartDefaults own, int quantity, bool separate)
    {
        string? name = table.Text("name");
        string? file = table.Text("file");
        string? inside = table.Text("object");
        var dimensions = table.Numbers("dimensions_mm", 3, Size, "width, depth and height");
        if (dimensions is { } size)
        {
            table.RefuseIfPresent("object", "a part given by its dimensions has no file and so no object.");
            if (separate) table.Refuse("separate", "a part given by its dimensions has no shells to separate.");
            file = null;
            return Planned(table, own, quantity) with
            {
                Name = name ?? string.Join(" × ", size.Select(s => s.ToString(CultureInfo.InvariantCulture))) + " mm",
                Named = name is not null,
                DimensionsMm = new Vec3(size[0], size[1], size[2]),
                Place = table.PlaceOf("dimensions_mm"),
            };
        }
        if (file is null) return null;
        string shown = StudyPaths.Shown(folder, file);
        return Planned(table, own, quantity) with
        {
            Name = name ?? inside ?? Path.GetFileNameWithoutExtension(shown),
            Named = name is not null,
            File = shown,
            FullPath = StudyPaths.Full(folder, file),
            Object = inside,
            Separate = separate,
            Place = table.PlaceOf("file"),
        };
    }

    private static PlannedPart Planned(TomlTable table, PartDefaults own, int quantity) => new()
    {
        Name = table.Place.Key,
        Quantity = quantity,
        Material = own.Material,
        Colour = own.Colour,
        Unit = own.Unit,
        BrimMm = own.BrimMm,
        Allowance = own.Allowance,
        Recipe = own.Recipe,
    };

    private static int Quantity(TomlTable table, int otherwise) => table.Count("quantity", 1, MostCopies) ?? otherwise;

    private static bool OneSource(TomlTable table, string[] sources)
    {
        foreach (string key in (string[])["name", "file", "object", "dimensions_mm"]) table.Has(key);
        string[] given = [.. sources.Where(table.Has)];
        if (given.Length == 1) return true;
        string choice = string.Join(" or ", sources);
        if (given.Length == 0) table.Refuse($"expected {choice}; the part names nothing to study.");
        else table.Refuse(given[1], $"expected only one of {choice}, found also {given[0]}.");
        return false;
    }
}
