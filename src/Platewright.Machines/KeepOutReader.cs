using System.Collections.Immutable;
using Platewright.Formats.Toml;
using Platewright.Geometry;

namespace Platewright.Machines;

/// <summary>Reads the <c>[[keep_out]]</c> tables: boxes in the coordinates of the build volume.</summary>
internal static class KeepOutReader
{
    private const int MostKeepOuts = 32;

    public static ImmutableArray<Bounds3> Read(TomlTable root, BuildVolume? volume, Margins margins)
    {
        ImmutableArray<TomlTable> tables = root.Tables("keep_out");
        if (tables.Length > MostKeepOuts)
        {
            root.Refuse("keep_out", $"at most {MostKeepOuts} keep-outs can be given, found {tables.Length}.");
            return [];
        }
        ImmutableArray<Bounds3> boxes = [.. tables.Select(t => Read(t, volume)).OfType<Bounds3>()];
        bool known = volume is not null && MarginsReader.Fault(volume, margins) is null;
        if (known && boxes.Length == tables.Length && boxes.Length > 0 && !FreeSpace.Remains(volume!, margins, boxes))
            root.Refuse("keep_out", "the keep-outs cover the whole build volume; nothing could be built.");
        return boxes;
    }

    private static Bounds3? Read(TomlTable table, BuildVolume? volume)
    {
        const string what = "x, y and z";
        var min = table.Numbers("min_mm", 3, MachineRanges.Coordinate, what, required: true);
        var max = table.Numbers("max_mm", 3, MachineRanges.Coordinate, what, required: true);
        if (min is not { } low || max is not { } high) return null;
        Bounds3 box = new(new(low[0], low[1], low[2]), new(high[0], high[1], high[2]));
        if (box.Min.X >= box.Max.X || box.Min.Y >= box.Max.Y || box.Min.Z >= box.Max.Z)
        {
            table.Refuse("max_mm", "each number must be greater than the same one of min_mm.");
            return null;
        }
        if (volume is null) return box;
        Bounds3 around = FreeSpace.BoundsOf(volume);
        if (Vec3.Min(around.Min, box.Min) == around.Min && Vec3.Max(around.Max, box.Max) == around.Max) return box;
        table.Refuse(
            $"not inside the build volume, which reaches from ({around.Min.X}, {around.Min.Y}, {around.Min.Z}) to "
            + $"({around.Max.X}, {around.Max.Y}, {around.Max.Z}) mm.");
        return null;
    }
}
