using System.Collections.Immutable;
using Platewright.Fit.Planar;
using Platewright.Fit.Search;
using Platewright.Geometry;

namespace Platewright.Fit;

/// <summary>
/// The smallest cube and the smallest square beds with their heights that hold a part at 100 %: what the coverage curves
/// are made of. Without margins; shrinkage and brim count.
/// </summary>
public static class SizeNeedSolver
{
    // Shapes of volume (height over bed) tried for the tilted curve, evenly spaced in their logarithm.
    private const int Shapes = 13;

    // A tenth of a millimetre on a machine of 200 mm; the result says what is proved.
    private const double CubeGap = 5e-4;

    // The curve is drawn, not judged by: a coarser gap than the cube's.
    private const double CurveGap = 2e-3;
    private const int CurveCells = 20_000;

    /// <exception cref="OperationCanceledException">Cancelled.</exception>
    public static SizeNeed Solve(PreparedPart part, FitOptions options, CancellationToken stop)
    {
        List<(BedAndHeight Size, Rotation Rotation)> turned = [.. part.Stands.Append(part.AsDrawn).Select(s => Rest(part, s))];
        List<(BedAndHeight Size, Rotation Rotation)> best = ParetoBest(turned);
        (BedAndHeight size, Rotation rotation) = best.MinBy(p => Math.Max(p.Size.BedMm, p.Size.HeightMm));
        double cubeTurned = Math.Max(size.BedMm, size.HeightMm);

        // Support takes its brim around the whole shadow: the bed of a tilted part is two brims wider than its shadow.
        SearchResult cube = InCube(part, 1, rotation, options, stop);
        double atLeastTilted = part.Growth / cube.UpperBound;
        (BedAndHeight cubeSize, Rotation cubeRotation) = OnSupport(part, cube.Rotation);
        double wider = 2 * part.Shape.BrimMm;
        if (wider > 0)
        {
            double ratio = 1 / (1 - wider / (1 / cube.Scale * part.Growth + wider));
            (BedAndHeight again, Rotation other) = OnSupport(part, InCube(part, ratio, cube.Rotation, options, stop).Rotation);
            if (EdgeOf(again) < EdgeOf(cubeSize)) (cubeSize, cubeRotation) = (again, other);
        }
        double cubeTilted = Math.Min(cubeTurned, EdgeOf(cubeSize));
        double atLeast = Math.Min(atLeastTilted, cubeTilted);

        List<(BedAndHeight, Rotation)> tilted = [.. best, (cubeSize, cubeRotation), .. Sweep(part, best, stop)];
        return new SizeNeed(cubeTurned, cubeTilted, atLeast, Curve(best), Curve(ParetoBest(tilted)));
    }

    // From flat and wide to tall and slim, each shape warm-started by the poses known so far.
    private static List<(BedAndHeight, Rotation)> Sweep(
        PreparedPart part, List<(BedAndHeight Size, Rotation Rotation)> known, CancellationToken stop)
    {
        var found = new List<(BedAndHeight, Rotation)>();
        double flattest = known.Min(k => k.Size.HeightMm / k.Size.BedMm) * 0.9;
        double slimmest = known.Max(k => k.Size.HeightMm / k.Size.BedMm) * 1.1;
        if (flattest <= 0 || !double.IsFinite(slimmest)) return found;
        Rotation warm = known[0].Rotation;
        for (int i = 0; i < Shapes; i++)
        {
            double ratio = flattest * Math.Pow(slimmest / flattest, (double)i / (Shapes - 1));
            Rotation rest = known.MinBy(k => Math.Max(k.Size.BedMm, k.Size.HeightMm / ratio)).Rotation;
            SearchResult at = FreeSearch.Run(
                part, new BoxContainer(1, 1, ratio), [warm, rest], CurveGap, CurveCells, null, stop);
            warm = at.Rotation;
            found.Add(OnSupport(part, at.Rotation));
        }
        return found;
    }

    private static SearchResult InCube(PreparedPart part, double height, Rotation warm, FitOptions options, CancellationToken stop) =>
        FreeSearch.Run(
            part, new BoxContainer(1, 1, height), [warm], Math.Max(options.Tolerance, CubeGap), options.MostCells, null, stop);

    private static double EdgeOf(BedAndHeight size) => Math.Max(size.BedMm, size.HeightMm);

    // The bed and height of exactly this rotation, on support.
    private static (BedAndHeight, Rotation) OnSupport(PreparedPart part, Rotation rotation)
    {
        var shadow = new Shadow(part.Grid, rotation);
        double bed = SquareBed.At(shadow, 0, part.Growth, 0) + 2 * part.Shape.BrimMm;
        return (new BedAndHeight(bed, shadow.HeightMm * part.Growth), rotation);
    }

    // The smallest square bed at any turn; standing as drawn counts as a way of being turned, as in the verdict.
    private static (BedAndHeight, Rotation) Rest(PreparedPart part, Shadow shadow)
    {
        (double bed, double angle) = SquareBed.Smallest(shadow, part.Growth, part.Shape.BrimMm);
        Rotation rotation = (Rotation.About(Vec3.UnitZ, angle) * shadow.Standing).Normalized();
        return (new BedAndHeight(bed, shadow.HeightMm * part.Growth), rotation);
    }

    private static ImmutableArray<BedAndHeight> Curve(List<(BedAndHeight Size, Rotation)> points) =>
        [.. points.Select(p => p.Size)];

    // Those that no other beats in both, narrowest bed first.
    private static List<(BedAndHeight Size, Rotation Rotation)> ParetoBest(
        List<(BedAndHeight Size, Rotation Rotation)> points)
    {
        var best = new List<(BedAndHeight Size, Rotation Rotation)>();
        double height = double.PositiveInfinity;
        foreach (var point in points.OrderBy(p => p.Size.BedMm).ThenBy(p => p.Size.HeightMm))
        {
            if (point.Size.HeightMm >= height) continue;
            best.Add(point);
            height = point.Size.HeightMm;
        }
        return best;
    }
}
