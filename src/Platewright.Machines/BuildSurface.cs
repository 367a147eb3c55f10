using System.Collections.Immutable;
using Platewright.Geometry;

namespace Platewright.Machines;

/// <summary>The flat face that builds start on.</summary>
public static class BuildSurface
{
    private const double Mm2PerM2 = 1e6;

    /// <summary>Its area before margins, m².</summary>
    public static double AreaM2(BuildVolume volume) => AreaMm2(volume) / Mm2PerM2;

    private static double AreaMm2(BuildVolume volume) => volume switch
    {
        BoxVolume box => box.WidthMm * box.DepthMm,
        CylinderVolume round => Math.PI * round.DiameterMm * round.DiameterMm / 4,
        PrismVolume prism => PolygonMm2(prism.PolygonMm),
        _ => throw new ArgumentException($"No such build volume: {volume.GetType().Name}.", nameof(volume)),
    };

    /// <summary>Half the sum of the corners' cross products.</summary>
    private static double PolygonMm2(ImmutableArray<Vec2> corners)
    {
        double twice = 0;
        for (int i = 0; i < corners.Length; i++) twice += corners[i].Cross(corners[(i + 1) % corners.Length]);
        return twice / 2;
    }
}
