using Platewright.Formats.Toml;

namespace Platewright.Machines;

/// <summary>
/// Reads <c>speed_mm_s</c>: one number for every kind of path, travel included, or a table by kind. A kind the table
/// leaves out goes as fast as walls; travel left out is as fast as the machine can.
/// </summary>
internal static class PathSpeedsReader
{
    private const string Key = "speed_mm_s";

    public static PathSpeeds? Read(TomlTable root)
    {
        if (root.Has(Key) && root.Entries[Key] is TomlTable) return ByKind(root.Table(Key)!);
        if (root.Has(Key) && root.Entries[Key] is TomlScalar { Value: not (long or double) } or TomlList)
        {
            root.Refuse(Key, $"expected a number {MachineRanges.Speed}, or a table of speeds by kind of path with "
                + $"walls at least, found {root.Entries[Key].Described}.");
            return null;
        }
        return root.Number(Key, MachineRanges.Speed, required: true) is { } all ? PathSpeeds.All(all) : null;
    }

    private static PathSpeeds? ByKind(TomlTable table)
    {
        double? walls = table.Number("walls", MachineRanges.Speed, required: true);
        double? Of(string kind) => table.Number(kind, MachineRanges.Speed) ?? walls;
        double? faces = Of("solid_faces");
        double? infill = Of("infill");
        double? support = Of("support");
        double? brim = Of("brim");
        double? travel = table.Number("travel", MachineRanges.Speed);
        return walls is { } w && faces is { } f && infill is { } i && support is { } s && brim is { } b
            ? new PathSpeeds(w, f, i, s, b, travel)
            : null;
    }
}
