using System.Globalization;
using Platewright.Geometry;
using Platewright.Machines;

namespace Platewright.Cli.Display;

/// <summary>A machine in words.</summary>
internal static class MachineText
{
    public static string Volume(BuildVolume volume) => volume switch
    {
        BoxVolume b => $"{Mm(b.WidthMm)} × {Mm(b.DepthMm)} × {Mm(b.HeightMm)} mm",
        CylinderVolume c => $"Ø {Mm(c.DiameterMm)} × {Mm(c.HeightMm)} mm",
        PrismVolume p => $"{p.PolygonMm.Length}-sided, {Mm(p.HeightMm)} mm high",
        _ => throw new ArgumentException($"No such build volume: {volume.GetType().Name}.", nameof(volume)),
    };

    public static string Margins(Margins m) =>
        $"left {Mm(m.LeftMm)}, right {Mm(m.RightMm)}, front {Mm(m.FrontMm)}, back {Mm(m.BackMm)}, top {Mm(m.TopMm)} mm";

    public static string Box(Bounds3 box) =>
        $"({Mm(box.Min.X)}, {Mm(box.Min.Y)}, {Mm(box.Min.Z)}) to ({Mm(box.Max.X)}, {Mm(box.Max.Y)}, {Mm(box.Max.Z)}) mm";

    public static string Heat(Machine machine) => machine.HeatsTo is { } h
        ? $"nozzle {Mm(h.NozzleC)}, bed {Mm(h.BedC)}, chamber {(h.ChamberC > 0 ? Mm(h.ChamberC) : "–")} °C"
        : "not stated";

    public static string Price(Machine machine) => machine.Price is { } p
        ? string.Create(CultureInfo.InvariantCulture, $"{p.Amount:0.##} {p.Currency}")
        : "not stated";

    private static string Mm(double mm) => BuildVolumeText.Mm(mm);
}
