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
        if (name is not null && !NameId.IsPossible(name))
            root.Refuse("name", "expected a name with a letter or a digit in it.");
        TomlTable? space = root.Table("build_volume", required: true);
        BuildVolume? volume = space is null ? null : BuildVolumeReader.Read(space);
        Margins margins = root.Table("margins") is { } edges ? MarginsReader.Read(edges, volume) : Margins.None;
        var keepOuts = KeepOutReader.Read(root, volume, margins);
        bool? enclosed = root.Flag("enclosed");
        HeatLimits? heats = root.Table("heats_to") is { } heat ? Heat(heat) : null;
        Price? price = root.Table("price") is { } money ? PriceReader.Read(money) : null;
        MotionLimits? motion = root.Table("motion") is { } limits ? MotionReader.Read(limits) : null;
        Extruder extruder = root.Table("extruder") is { } end ? ExtruderReader.Read(end) : new();
        Handling handling = root.Table("handling") is { } work ? ExtruderReader.Handling(work) : new();
        Heating? heating = root.Table("heating") is { } heaters ? HeatingReader.Read(heaters, volume) : null;
        if (enclosed is false && heating?.Enclosure is not null)
            root.Refuse("enclosed", "the file has [heating.enclosure], so the machine is closed; keep one.");
        var footprint = root.Numbers("footprint_mm", 2, MachineRanges.Size, "width and depth");
        FloorInUse floor = root.Table("floor") is { } ground ? OwningReader.Floor(ground) : new();
        Upkeep upkeep = root.Table("upkeep") is { } care ? OwningReader.Upkeep(care) : new();
        double? noise = root.Number("noise_db", MachineRanges.Noise);
        Exhaust? exhaust = Exhausts.Named(root.Word("exhaust", Exhausts.Words));
        string? note = root.Text("note");
        Machine? machine = name is null || volume is null ? null : new Machine
        {
            Name = name,
            BuildVolume = volume,
            Margins = margins,
            KeepOuts = keepOuts,
            HeatsTo = heats,
            Enclosed = heating?.Enclosure is null ? enclosed : true,
            Price = price,
            FootprintMm = footprint is { } size ? new Vec2(size[0], size[1]) : null,
            Floor = floor,
            NoiseDb = noise,
            Exhaust = exhaust,
            Upkeep = upkeep,
            Note = note,
            Motion = motion,
            Extruder = extruder,
            Handling = handling,
            Heating = heating,
        };
        var ranges = RangeReader.Read(root, machine);
        return machine is null ? null : machine with { Ranges = ranges };
    }

    private static HeatLimits? Heat(TomlTable table)
    {
        double? nozzle = table.Number("nozzle_c", MachineRanges.Nozzle, required: true);
        double bed = table.Number("bed_c", MachineRanges.Bed) ?? 0;
        double chamber = table.Number("chamber_c", MachineRanges.Chamber) ?? 0;
        return nozzle is { } reached ? new HeatLimits(reached, bed, chamber) : null;
    }
}
