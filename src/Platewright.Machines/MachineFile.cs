using Platewright.Formats.Toml;
using Platewright.Geometry;

namespace Platewright.Machines;

/// <summary>Reads a machine from its TOML file: docs/machine-file.md says what it may hold.</summary>
public static class MachineFile
{
    /// <summary>Reads a machine file.</summary>
    /// <exception cref="DescriptionException">Each thing wrong with its line, its key and what was
    /// expected.</exception>
    public static Machine Read(string path) => TomlFile.Read(path, Read);

    /// <summary>Reads the text of a machine file; <paramref name="file"/> is how errors name it.</summary>
    /// <exception cref="DescriptionException">Each thing wrong with its line, its key and what was
    /// expected.</exception>
    public static Machine Parse(string text, string file) => TomlFile.Parse(text, file, Read);

    private static Machine? Read(TomlTable root)
    {
        string? name = root.Text("name", required: true);
        if (name is not null && !MachineId.IsPossible(name))
            root.Refuse("name", "expected a name with a letter or a digit in it.");
        TomlTable? space = root.Table("build_volume", required: true);
        BuildVolume? volume = space is null ? null : BuildVolumeReader.Read(space);
        Margins margins = root.Table("margins") is { } edges ? MarginsReader.Read(edges, volume) : Margins.None;
        var keepOuts = KeepOutReader.Read(root, volume, margins);
        bool? enclosed = root.Flag("enclosed");
        HeatLimits? heats = root.Table("heats_to") is { } heat ? Heat(heat) : null;
        Price? price = root.Table("price") is { } money ? PriceOf(money) : null;
        MotionLimits? motion = root.Table("motion") is { } limits ? Motion(limits) : null;
        var footprint = root.Numbers("footprint_mm", 2, MachineRanges.Size, "width and depth");
        string? note = root.Text("note");
        if (name is null || volume is null) return null;
        return new Machine
        {
            Name = name,
            BuildVolume = volume,
            Margins = margins,
            KeepOuts = keepOuts,
            HeatsTo = heats,
            Enclosed = enclosed,
            Price = price,
            FootprintMm = footprint is { } size ? new Vec2(size[0], size[1]) : null,
            Note = note,
            Motion = motion,
        };
    }

    private static HeatLimits? Heat(TomlTable table)
    {
        double? nozzle = table.Number("nozzle_c", MachineRanges.Nozzle, required: true);
        double bed = table.Number("bed_c", MachineRanges.Bed) ?? 0;
        double chamber = table.Number("chamber_c", MachineRanges.Chamber) ?? 0;
        return nozzle is { } reached ? new HeatLimits(reached, bed, chamber) : null;
    }

    private static Price? PriceOf(TomlTable table)
    {
        double? amount = table.Number("amount", MachineRanges.Price, required: true);
        string? currency = table.Text("currency", required: true);
        if (currency is not null && !IsCurrency(currency))
            table.Refuse("currency", $"expected three capital letters of ISO 4217, as \"EUR\", found \"{currency}\".");
        return amount is { } value && currency is not null
            ? new Price(decimal.Round((decimal)value, 2), currency)
            : null;
    }

    private static MotionLimits? Motion(TomlTable table)
    {
        double? speed = table.Number("speed_mm_s", MachineRanges.Speed, required: true);
        double? acceleration = table.Number("acceleration_mm_s2", MachineRanges.Acceleration, required: true);
        double? tolerance = table.Number("contour_tolerance_mm", MachineRanges.ContourTolerance, required: true);
        return speed is { } v && acceleration is { } a && tolerance is { } d ? new MotionLimits(v, a, d) : null;
    }

    private static bool IsCurrency(string text) => text.Length == 3 && text.All(char.IsAsciiLetterUpper);
}
