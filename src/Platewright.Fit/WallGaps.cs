using Platewright.Geometry;
using Platewright.Machines;

namespace Platewright.Fit;

/// <summary>How far a part in a pose is from each wall that margins leave.</summary>
public static class WallGaps
{
    /// <summary>
    /// To each wall, mm, negative where the part is beyond it. Of a box: left, right, front, back, top; of a cylinder: round, top; of
    /// a prism: its sides in the order of its corners, top.
    /// </summary>
    /// <param name="corners">Corners of the part's hull as drawn.</param>
    /// <param name="pose">Where the part is.</param>
    /// <param name="machine">The machine.</param>
    /// <exception cref="ArgumentException">There are no corners.</exception>
    public static IReadOnlyList<double> Of(ReadOnlySpan<Vec3> corners, Pose pose, Machine machine)
    {
        if (corners.IsEmpty) throw new ArgumentException("A part without corners is at no distance from anything.", nameof(corners));
        Matrix3 turn = pose.Rotation.ToMatrix() * pose.Scale;
        var placed = new Vec3[corners.Length];
        for (int i = 0; i < placed.Length; i++) placed[i] = turn.Apply(corners[i]) + pose.Translation;
        double top = machine.BuildVolume.HeightMm - machine.Margins.TopMm - placed.Max(p => p.Z);
        return [.. Sides(placed, machine), top];
    }

    private static IEnumerable<double> Sides(Vec3[] placed, Machine machine)
    {
        Margins m = machine.Margins;
        switch (machine.BuildVolume)
        {
            case BoxVolume box:
                return
                [
                    placed.Min(p => p.X) - m.LeftMm, box.WidthMm - m.RightMm - placed.Max(p => p.X),
                    placed.Min(p => p.Y) - m.FrontMm, box.DepthMm - m.BackMm - placed.Max(p => p.Y),
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
}
