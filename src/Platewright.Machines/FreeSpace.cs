using System.Collections.Immutable;
using Platewright.Geometry;

namespace Platewright.Machines;

/// <summary>Whether anything of a build volume is left between its margins and keep-outs.</summary>
internal static class FreeSpace
{
    /// <summary>The box around a build volume, before margins.</summary>
    public static Bounds3 BoundsOf(BuildVolume volume) => volume switch
    {
        BoxVolume box => new(default, new(box.WidthMm, box.DepthMm, box.HeightMm)),
        CylinderVolume round => new(
            new(-round.DiameterMm / 2, -round.DiameterMm / 2, 0),
            new(round.DiameterMm / 2, round.DiameterMm / 2, round.HeightMm)),
        PrismVolume prism => Bounds3.Of(
            [.. prism.PolygonMm.SelectMany(p => new Vec3[] { new(p.X, p.Y, 0), new(p.X, p.Y, prism.HeightMm) })]),
        _ => throw new ArgumentException($"No such build volume: {volume.GetType().Name}.", nameof(volume)),
    };

    /// <summary>
    /// True when some space with volume is left. The planes of all boxes cut space into cells, each wholly inside or
    /// wholly outside every keep-out; one free cell that meets the volume within its margins is enough.
    /// </summary>
    public static bool Remains(BuildVolume volume, Margins margins, ImmutableArray<Bounds3> keepOuts)
    {
        Bounds3 around = BoundsOf(volume);
        Vec3 low = around.Min + new Vec3(margins.LeftMm, margins.FrontMm, 0);
        Vec3 high = around.Max - new Vec3(margins.RightMm, margins.BackMm, margins.TopMm);
        double[] xs = Cuts(low.X, high.X, keepOuts.SelectMany(k => new[] { k.Min.X, k.Max.X }));
        double[] ys = Cuts(low.Y, high.Y, keepOuts.SelectMany(k => new[] { k.Min.Y, k.Max.Y }));
        double[] zs = Cuts(low.Z, high.Z, keepOuts.SelectMany(k => new[] { k.Min.Z, k.Max.Z }));
        for (int i = 1; i < xs.Length; i++)
        {
            for (int j = 1; j < ys.Length; j++)
            {
                if (!Meets(volume, margins, new(xs[i - 1], ys[j - 1]), new(xs[i], ys[j]))) continue;
                for (int k = 1; k < zs.Length; k++)
                {
                    Vec3 middle = new((xs[i - 1] + xs[i]) / 2, (ys[j - 1] + ys[j]) / 2, (zs[k - 1] + zs[k]) / 2);
                    if (!keepOuts.Any(box => Holds(box, middle))) return true;
                }
            }
        }
        return false;
    }

    private static double[] Cuts(double low, double high, IEnumerable<double> planes) =>
        [low, .. planes.Where(p => p > low && p < high).Distinct().Order(), high];

    private static bool Holds(Bounds3 box, Vec3 p) =>
        p.X > box.Min.X && p.X < box.Max.X && p.Y > box.Min.Y && p.Y < box.Max.Y && p.Z > box.Min.Z && p.Z < box.Max.Z;

    private static bool Meets(BuildVolume volume, Margins margins, Vec2 low, Vec2 high)
    {
        switch (volume)
        {
            case CylinderVolume round:
                Vec2 nearest = new(Math.Clamp(0, low.X, high.X), Math.Clamp(0, low.Y, high.Y));
                return nearest.Length < round.DiameterMm / 2 - margins.LeftMm;
            case PrismVolume prism:
                ImmutableArray<Vec2> rest = ConvexPolygon.Inset(prism.PolygonMm, margins.LeftMm);
                rest = ConvexPolygon.KeepBeyond(rest, new(1, 0), low.X);
                rest = ConvexPolygon.KeepBeyond(rest, new(-1, 0), -high.X);
                rest = ConvexPolygon.KeepBeyond(rest, new(0, 1), low.Y);
                return !ConvexPolygon.KeepBeyond(rest, new(0, -1), -high.Y).IsEmpty;
            default:
                return true;
        }
    }
}
