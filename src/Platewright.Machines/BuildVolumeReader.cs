using System.Collections.Immutable;
using Platewright.Formats.Toml;
using Platewright.Geometry;

namespace Platewright.Machines;

/// <summary>Reads the <c>[build_volume]</c> table: its shape says which other keys it has.</summary>
internal static class BuildVolumeReader
{
    private static readonly string[] Shapes = ["box", "cylinder", "prism"];

    private static readonly (string Key, string[] Shapes)[] KeysByShape =
    [
        ("size_mm", ["box"]), ("diameter_mm", ["cylinder"]), ("polygon_mm", ["prism"]),
        ("height_mm", ["cylinder", "prism"]),
    ];

    public static BuildVolume? Read(TomlTable table)
    {
        string? shape = table.Word("shape", Shapes, required: true);
        foreach ((string key, string[] shapes) in KeysByShape)
        {
            bool present = table.Has(key);
            if (shape is null || !present || shapes.Contains(shape)) continue;
            string owners = string.Join(" or ", shapes.Select(s => $"\"{s}\""));
            table.Refuse(key, $"belongs to the shape {owners}, but the shape here is \"{shape}\".");
        }
        return shape switch
        {
            "box" => Box(table),
            "cylinder" => Cylinder(table),
            "prism" => Prism(table),
            _ => null,
        };
    }

    private static BoxVolume? Box(TomlTable table) =>
        table.Numbers("size_mm", 3, MachineRanges.Size, "width, depth and height", required: true) is { } size
            ? new BoxVolume(size[0], size[1], size[2])
            : null;

    private static CylinderVolume? Cylinder(TomlTable table)
    {
        double? diameter = table.Number("diameter_mm", MachineRanges.Size, required: true);
        double? height = table.Number("height_mm", MachineRanges.Size, required: true);
        return diameter is { } d && height is { } h ? new CylinderVolume(d, h) : null;
    }

    private static PrismVolume? Prism(TomlTable table)
    {
        double? height = table.Number("height_mm", MachineRanges.Size, required: true);
        var rows = table.NumberRows("polygon_mm", 2, MachineRanges.Coordinate, "x and y", required: true);
        if (rows is null) return null;
        ImmutableArray<Vec2> corners = [.. rows.Value.Select(r => new Vec2(r[0], r[1]))];
        if (ConvexPolygon.Fault(corners) is { } fault)
        {
            table.Refuse("polygon_mm", fault);
            return null;
        }
        return height is { } h ? new PrismVolume(corners, h) : null;
    }
}
