using Platewright.Formats.Toml;

namespace Platewright.Machines;

/// <summary>Reads the <c>[margins]</c> table and sees that it leaves room.</summary>
internal static class MarginsReader
{
    private static readonly string[] BoxSides = ["left_mm", "right_mm", "front_mm", "back_mm"];

    /// <param name="table">The table.</param>
    /// <param name="volume">What the margins are taken from; null where it could not be read.</param>
    public static Margins Read(TomlTable table, BuildVolume? volume)
    {
        double side = table.Number("side_mm", MachineRanges.Margin) ?? 0;
        double top = table.Number("top_mm", MachineRanges.Margin) ?? 0;
        double[] sides = [.. BoxSides.Select(key => table.Number(key, MachineRanges.Margin) ?? side)];
        if (volume is CylinderVolume or PrismVolume)
        {
            foreach (string key in BoxSides)
                table.RefuseIfPresent(key, "only a box has four sides; use side_mm, the margin all round.");
            sides = [side, side, side, side];
        }
        Margins margins = new(sides[0], sides[1], sides[2], sides[3], top);
        if (volume is not null && Fault(volume, margins) is { } fault) table.Refuse(fault);
        return margins;
    }

    /// <summary>What is wrong with margins on a volume, as a sentence; null where they leave room.</summary>
    public static string? Fault(BuildVolume volume, Margins margins)
    {
        if (margins.TopMm >= volume.HeightMm)
            return $"the top margin of {margins.TopMm} mm leaves nothing of the height of {volume.HeightMm} mm.";
        return volume switch
        {
            BoxVolume box when margins.LeftMm + margins.RightMm >= box.WidthMm =>
                $"{margins.LeftMm} mm left and {margins.RightMm} mm right leave nothing of {box.WidthMm} mm width.",
            BoxVolume box when margins.FrontMm + margins.BackMm >= box.DepthMm =>
                $"{margins.FrontMm} mm front and {margins.BackMm} mm back leave nothing of {box.DepthMm} mm depth.",
            CylinderVolume round when 2 * margins.LeftMm >= round.DiameterMm =>
                $"a margin of {margins.LeftMm} mm all round leaves nothing of the diameter of {round.DiameterMm} mm.",
            PrismVolume prism when ConvexPolygon.Inset(prism.PolygonMm, margins.LeftMm).IsEmpty =>
                $"a margin of {margins.LeftMm} mm all round leaves nothing of the polygon.",
            _ => null,
        };
    }
}
