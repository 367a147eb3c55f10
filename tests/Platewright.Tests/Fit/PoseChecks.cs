using Platewright.Fit;
using Platewright.Geometry;
using Platewright.Machines;

namespace Platewright.Tests.Fit;

/// <summary>Plain checks of poses, written without the solver: the walls of each volume, point by point.</summary>
internal static class PoseChecks
{
    private const double RoundingMm = 1e-6;
    private const double ContactBandMm = 0.1;

    /// <summary>s (1 + σ) P + t ⊂ C ⊖ m, the contact a brim further inside.</summary>
    public static void AssertInside(Vec3[] points, Machine machine, WayOfFitting way, double shrinkage, double brim)
    {
        Pose pose = way.Pose;
        Assert.Equal(way.LargestScale * (1 + shrinkage), pose.Scale, 1e-9 * Math.Max(1, pose.Scale));
        Matrix3 turn = pose.Rotation.ToMatrix();
        double low = points.Min(p => turn.Row2.Dot(p));
        foreach (Vec3 p in points)
        {
            Vec3 q = pose.Scale * turn.Apply(p) + pose.Translation;
            bool touches = turn.Row2.Dot(p) <= low + ContactBandMm;
            double outside = Outside(machine, q, touches ? brim : 0);
            Assert.True(outside <= RoundingMm, $"{q} is {outside} mm outside {machine.BuildVolume}");
        }
    }

    /// <summary>How far a point is outside, mm; negative inside.</summary>
    public static double Outside(Machine machine, Vec3 q, double brim)
    {
        Margins m = machine.Margins;
        double upright = Math.Max(-q.Z, q.Z - (machine.BuildVolume.HeightMm - m.TopMm));
        double flat = machine.BuildVolume switch
        {
            BoxVolume b => Math.Max(
                Math.Max(m.LeftMm - q.X, q.X - (b.WidthMm - m.RightMm)), Math.Max(m.FrontMm - q.Y, q.Y - (b.DepthMm - m.BackMm))),
            CylinderVolume c => Math.Sqrt(q.X * q.X + q.Y * q.Y) - (c.DiameterMm / 2 - m.LeftMm),
            PrismVolume p => Enumerable.Range(0, p.PolygonMm.Length).Max(i =>
            {
                Vec2 a = p.PolygonMm[i], edge = p.PolygonMm[(i + 1) % p.PolygonMm.Length] - a;
                return (new Vec2(q.X, q.Y) - a).Cross(edge) / edge.Length + m.LeftMm;
            }),
            _ => double.NaN,
        };
        return Math.Max(upright, flat + brim);
    }

    /// <summary>The largest scale over a grid of rotations, by widths alone: an optimistic answer, never below the truth.</summary>
    public static double BestOfGrid(Vec3[] points, Machine machine, int steps)
    {
        double best = 0;
        for (int i = 0; i < steps; i++)
            for (int j = 0; j < steps; j++)
                for (int k = 0; k < steps; k++)
                {
                    Rotation r = Rotation.About(Vec3.UnitZ, 2 * Math.PI * i / steps)
                        * Rotation.About(Vec3.UnitX, Math.Acos(1 - 2 * (j + 0.5) / steps))
                        * Rotation.About(Vec3.UnitZ, 2 * Math.PI * k / steps);
                    best = Math.Max(best, ScaleAt(points, machine, r.ToMatrix()));
                }
        return best;
    }

    // The scale at one rotation: in a box exactly; on round and polygonal surfaces with the shadow about its middle,
    // which is one valid place.
    private static double ScaleAt(Vec3[] points, Machine machine, Matrix3 turn)
    {
        Vec3[] turned = [.. points.Select(turn.Apply)];
        Bounds3 box = Bounds3.Of(turned);
        Vec3 size = box.Size;
        double byHeight = machine.BuildVolume.HeightMm / size.Z;
        Vec2 middle = new(box.Center.X, box.Center.Y);
        return Math.Min(byHeight, machine.BuildVolume switch
        {
            BoxVolume b => Math.Min(b.WidthMm / size.X, b.DepthMm / size.Y),
            CylinderVolume c => c.DiameterMm / 2 / turned.Max(p => (new Vec2(p.X, p.Y) - middle).Length),
            PrismVolume p => Enumerable.Range(0, p.PolygonMm.Length).Min(i =>
            {
                Vec2 a = p.PolygonMm[i], edge = p.PolygonMm[(i + 1) % p.PolygonMm.Length] - a;
                Vec2 n = new Vec2(edge.Y, -edge.X) / edge.Length;
                return n.Dot(a) / turned.Max(q => n.Dot(new Vec2(q.X, q.Y) - middle));
            }),
            _ => 0,
        });
    }
}
