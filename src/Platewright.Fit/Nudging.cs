using Platewright.Geometry;

namespace Platewright.Fit;

/// <summary>
/// Improves poses where keep-outs matter, which the search over rotations does not see: from its best optima, small turns
/// about each axis, shorter and shorter (a pattern search, Hooke and Jeeves 1961). Finds, proves nothing.
/// </summary>
internal static class Nudging
{
    private const int MostStarts = 4;
    private const double FirstStep = 0.06;
    private const double LastStep = 1e-5;

    public static WayOfFitting Best(Placing placing, IReadOnlyList<Rotation> starts) =>
        starts.Select(placing.At).OrderByDescending(w => w.LargestScale).Take(MostStarts)
            .Select(w => Improved(placing, w)).MaxBy(w => w.LargestScale)!;

    private static WayOfFitting Improved(Placing placing, WayOfFitting way)
    {
        Vec3[] axes = [Vec3.UnitX, Vec3.UnitY, Vec3.UnitZ, -Vec3.UnitX, -Vec3.UnitY, -Vec3.UnitZ];
        for (double step = FirstStep; step >= LastStep;)
        {
            WayOfFitting next = axes
                .Select(axis => placing.At((Rotation.About(axis, step) * way.Pose.Rotation).Normalized()))
                .MaxBy(w => w.LargestScale)!;
            if (next.LargestScale > way.LargestScale) way = next;
            else step /= 2;
        }
        return way;
    }
}
