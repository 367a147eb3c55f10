using Platewright.Geometry;

namespace Platewright.Fit.Pieces;

/// <summary>
/// The fewest parallel slices of equal thickness that each lie flat in the build volume. Judged on the hull, so the mesh
/// need not be sound; other cuts may need fewer.
/// </summary>
internal static class SlabCut
{
    // This stretch of the part lies within one piece whether it is cut into 2, 3, 4, 5 or 6: where it does not fit, none does.
    private const double CommonFrom = 0.4;
    private const double CommonTo = 0.5;
    private const int CoveredPieces = 6;

    public static PartCut? Fewest(
        PreparedPart part, UsableVolume volume, Allowance allowance, int mostPieces, CancellationToken stop)
    {
        if (part.Shape.Hull.Dimension < 3) return null;
        if (mostPieces is < 2 or > CoveredPieces)
            throw new ArgumentOutOfRangeException(nameof(mostPieces), mostPieces, $"Pieces must be 2 … {CoveredPieces}.");
        Vec3[] directions = [.. Directions(part, allowance, stop).Where(d => PoseOf(part, volume, allowance, d, CommonFrom, CommonTo) is not null)];
        for (int n = 2; n <= mostPieces; n++)
            foreach (Vec3 direction in directions)
            {
                stop.ThrowIfCancellationRequested();
                if (Cut(part, volume, allowance, n, direction) is { } cut) return cut;
            }
        return null;
    }

    // Along the longest chord, the file's axes, and across the least width.
    private static IEnumerable<Vec3> Directions(PreparedPart part, Allowance allowance, CancellationToken stop)
    {
        yield return Vec3.UnitX;
        yield return Vec3.UnitY;
        yield return Vec3.UnitZ;
        if (!allowance.Turn) yield break;
        Vec3 thin = part.LeastWidth(stop).Rotation.ToMatrix().Row2;
        Vec3 along = LongestChord(part.Grid.Vertices);
        yield return along.Normalized();
        yield return thin;
        Vec3 across = thin.Cross(along);
        if (across.Length > 1e-6 * along.Length) yield return across.Normalized();
    }

    // A chord found by walking to the farthest vertex back and forth; any direction is a valid one to cut along.
    private static Vec3 LongestChord(ReadOnlySpan<Vec3> vertices)
    {
        Vec3 from = vertices[0], to = from;
        for (int pass = 0; pass < 4; pass++)
        {
            (from, to) = (to, from);
            foreach (Vec3 v in vertices)
                if ((v - from).Length > (to - from).Length) to = v;
        }
        return to - from;
    }

    // The middle first: it is where most parts are largest.
    private static PartCut? Cut(PreparedPart part, UsableVolume volume, Allowance allowance, int n, Vec3 direction)
    {
        var poses = new Pose[n];
        foreach (int i in Enumerable.Range(0, n).OrderBy(i => Math.Abs(2 * i + 1 - n)))
        {
            if (PoseOf(part, volume, allowance, direction, (double)i / n, (i + 1.0) / n) is not { } pose) return null;
            poses[i] = pose;
        }
        (double low, double extent) = Along(part, direction);
        return new PartCut(direction, [.. Enumerable.Range(0, n + 1).Select(i => low + extent * i / n)], [.. poses]);
    }

    private static (double Low, double Extent) Along(PreparedPart part, Vec3 direction)
    {
        ReadOnlySpan<Vec3> vertices = part.Grid.Vertices;
        double low = -vertices[part.Grid.Farthest(-direction)].Dot(-direction);
        return (low, vertices[part.Grid.Farthest(direction)].Dot(direction) - low);
    }

    // How a slice lies in the volume, null where it does not fit. From and to: shares of the part's extent along the direction.
    private static Pose? PoseOf(
        PreparedPart part, UsableVolume volume, Allowance allowance, Vec3 direction, double from, double to)
    {
        (double low, double extent) = Along(part, direction);
        ConvexHull slice = ConvexHull.Of(Slice(part.Shape.Hull, direction, low + extent * from, low + extent * to));
        var placing = new Placing(new PreparedPart(part.Shape with { Hull = slice }), volume, part.Shape.BrimMm);
        IEnumerable<Func<WayOfFitting>> ways =
            allowance.Turn ? [placing.AsDrawn, placing.Upright, placing.Turned] : [placing.AsDrawn];
        return ways.Select(way => way()).FirstOrDefault(way => way.Fits) is { } fits ? placing.PoseAt(fits, 1) : null;
    }

    private static Vec3[] Slice(ConvexHull hull, Vec3 direction, double from, double to)
    {
        var points = new List<Vec3>();
        ReadOnlySpan<Vec3> vertices = hull.Vertices;
        foreach (Vec3 v in vertices)
            if (v.Dot(direction) >= from && v.Dot(direction) <= to) points.Add(v);
        foreach (HullFace face in hull.Faces)
            for (int i = 0; i < face.Corners.Count; i++)
            {
                Vec3 a = vertices[face.Corners[i]], b = vertices[face.Corners[(i + 1) % face.Corners.Count]];
                AddCrossing(points, a, b, direction, from);
                AddCrossing(points, a, b, direction, to);
            }
        return [.. points];
    }

    private static void AddCrossing(List<Vec3> points, Vec3 a, Vec3 b, Vec3 direction, double at)
    {
        double da = a.Dot(direction) - at, db = b.Dot(direction) - at;
        if (da * db < 0) points.Add(a + (b - a) * (da / (da - db)));
    }
}
