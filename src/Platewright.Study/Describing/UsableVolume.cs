using Platewright.Geometry;
using Platewright.Machines;

namespace Platewright.Study.Describing;

/// <summary>Where a machine stands on the line of sizes.</summary>
internal static class UsableVolume
{
    /// <summary>Edge of the cube with the volume that the machine's margins leave, mm.</summary>
    public static double EdgeMm(Machine machine)
    {
        Margins m = machine.Margins;
        double surface = machine.BuildVolume switch
        {
            BoxVolume box => (box.WidthMm - m.LeftMm - m.RightMm) * (box.DepthMm - m.FrontMm - m.BackMm),
            CylinderVolume round => Math.PI / 4 * Math.Pow(round.DiameterMm - 2 * m.LeftMm, 2),
            PrismVolume prism => ConvexPolygon.AreaMm2(prism.SurfaceWithin(m.LeftMm).AsSpan()),
            _ => throw new ArgumentException($"No such build volume: {machine.BuildVolume.GetType().Name}.", nameof(machine)),
        };
        return Math.Cbrt(surface * (machine.BuildVolume.HeightMm - m.TopMm));
    }
}
