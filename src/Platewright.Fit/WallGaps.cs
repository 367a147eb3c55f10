using Platewright.Geometry;
using Platewright.Machines;

namespace Platewright.Fit;

/// <summary>How far a part in a pose is from each wall that margins leave, and from each keep-out.</summary>
/// <param name="WallsMm">
/// To each wall, mm, negative where the part is beyond it. Of a box: left, right, front, back, top; of a cylinder: round, top; of a
/// prism: its sides in the order of its corners, top.
/// </param>
/// <param name="KeepOutsMm">
/// To each keep-out box along the direction of x, y, z in which they are farthest apart, mm, negative where their boxes overlap: at
/// least so far are they apart.
/// </param>
public sealed record WallGaps(IReadOnlyList<double> WallsMm, IReadOnlyList<double> KeepOutsMm)
{
    /// <param name="corners">Corners of the part's hull as drawn.</param>
    /// <param name="pose">Where the part is.</param>
    /// <param name="machine">The machine.</param>
    /// <exception cref="ArgumentException">There are no corners.</exception>
    public static WallGaps Of(ReadOnlySpan<Vec3> corners, Pose pose, Machine machine)
    {
        if (corners.IsEmpty) throw new ArgumentException("A part without corners is at no distance from anything.", nameof(corners));
        Matrix3 turn = pose.Rotation.ToMatrix() * pose.Scale;
        var placed = new Vec3[corners.Length];
        for (int i = 0; i < placed.Length; i++) placed[i] = turn.Apply(corners[i]) + pose.Translation;
        Bounds3 bounds = placed.Aggregate(Bounds3.Empty, (box, p) => box.Including(p));
        double top = machine.BuildVolume.HeightMm - machine.Margins.TopMm - bounds.Max.Z;
        return new WallGaps(
            [.. Sides(placed, bounds, machine), top], [.. machine.KeepOuts.Select(box => Apart(bounds, box))]);
    }

    private static IEnumerable<double> Sides(Vec3[] placed, Bounds3 bounds, Machine machine)
    {
        Margins m = machine.Margins;
        switch (machine.BuildVolume)
        {
            case BoxVolume box:
                return
                [
                    bounds.Min.X - m.LeftMm, box.WidthMm - m.RightMm - bounds.Max.X,
                    bounds.Min.Y - m.FrontMm, box.DepthMm - m.BackMm - bounds.Max.Y,
                ];
            case CylinderVolume round:
                return [round.DiameterMm / 2 - m.LeftMm - placed.Max(p => Math.Sqrt(p.X * p.X + p.Y * p.Y))];
            case PrismVolume prism:
                return prism.PolygonMm.Select((from, i) =>
                {
                    Vec2 along = prism.PolygonMm[(i + 1) % prism.PolygonMm.Length] - from;
                    return placed.Min(p => along.Cross(new Vec2(p.X, p.Y) - from)) / along.Length - m.LeftMm;
                });
            default:
                throw new ArgumentException($"No such build volume: {machine.BuildVolume.GetType().Name}.", nameof(machine));
        }
    }

    private static double Apart(Bounds3 part, Bounds3 box)
    {
        Vec3 below = box.Min - part.Max, above = part.Min - box.Max;
        return new[] { below.X, below.Y, below.Z, above.X, above.Y, above.Z }.Max();
    }
}
