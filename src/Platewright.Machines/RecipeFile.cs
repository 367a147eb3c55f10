using Platewright.Formats.Toml;

namespace Platewright.Machines;

/// <summary>Reads a recipe from its TOML file: docs/recipe-file.md says what it may hold.</summary>
public static class RecipeFile
{
    private const int MostWalls = 50;

    private const int MostSolidLayers = 1_000;

    /// <summary>The word that takes a material's own number.</summary>
    private const string OfMaterial = "material";

    private static readonly NumberRange LayerHeight = NumberRange.Positive(10, "mm");

    private static readonly NumberRange BeadWidth = NumberRange.Positive(20, "mm");

    private static readonly NumberRange Share = new(0, 1);

    private static readonly NumberRange Overhang = new(0, 89, "degrees");

    private static readonly (string Word, InfillPattern Pattern)[] Patterns =
    [
        ("lines", InfillPattern.Lines), ("grid", InfillPattern.Grid), ("triangles", InfillPattern.Triangles),
        ("gyroid", InfillPattern.Gyroid),
    ];

    /// <summary>Reads a recipe file.</summary>
    /// <exception cref="DescriptionException">Each thing wrong with its line, its key and what was
    /// expected.</exception>
    public static Recipe Read(string path) => TomlFile.Read(path, Read);

    /// <summary>Reads the text of a recipe file; <paramref name="file"/> is how errors name it.</summary>
    /// <exception cref="DescriptionException">Each thing wrong with its line, its key and what was
    /// expected.</exception>
    public static Recipe Parse(string text, string file) => TomlFile.Parse(text, file, Read);

    private static Recipe? Read(TomlTable root)
    {
        string? name = root.Text("name", required: true);
        if (name is not null && !NameId.IsPossible(name))
            root.Refuse("name", "expected a name with a letter or a digit in it.");
        double? height = root.Number("layer_height_mm", LayerHeight, required: true);
        double? width = root.Number("bead_width_mm", BeadWidth, required: true);
        if (width < height)
            root.Refuse("bead_width_mm", $"a bead of {width} mm is narrower than its layer height of {height} mm.");
        int? walls = root.Count("walls", 0, MostWalls, required: true);
        int? solid = root.Count("solid_layers", 0, MostSolidLayers, required: true);
        double? infill = root.Number("infill_share", Share, required: true);
        PathSpeeds? speeds = PathSpeedsReader.Read(root);
        double? brim = root.NumberOrWord("brim_mm", MaterialRanges.Brim, OfMaterial, out bool brimOfMaterial);
        double? least = root.NumberOrWord(
            "minimum_layer_time_s", MachineRanges.Time, OfMaterial, out bool timeOfMaterial);
        Recipe usual = new()
        {
            Name = name ?? "",
            LayerHeightMm = height ?? 0,
            BeadWidthMm = width ?? 0,
            Walls = walls ?? 0,
            SolidLayers = solid ?? 0,
            InfillShare = infill ?? 0,
            Speeds = speeds ?? PathSpeeds.All(0),
        };
        Recipe read = usual with
        {
            Purpose = root.Text("purpose"),
            InfillPattern = Pattern(root) ?? usual.InfillPattern,
            Support = root.Flag("support") ?? usual.Support,
            OverhangAngleDeg = root.Number("overhang_angle_deg", Overhang) ?? usual.OverhangAngleDeg,
            SupportShare = root.Number("support_share", Share) ?? usual.SupportShare,
            BrimMm = brimOfMaterial ? null : brim ?? usual.BrimMm,
            MinimumLayerTimeS = timeOfMaterial ? null : least ?? usual.MinimumLayerTimeS,
            Material = root.Text("material"),
        };
        bool complete = name is not null && height is not null && width is not null && walls is not null
            && solid is not null && infill is not null && speeds is not null;
        return complete ? read : null;
    }

    private static InfillPattern? Pattern(TomlTable root)
    {
        string? word = root.Word("infill_pattern", [.. Patterns.Select(p => p.Word)]);
        return word is null ? null : Patterns.First(p => p.Word == word).Pattern;
    }
}
