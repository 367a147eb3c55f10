namespace Platewright.Geometry;

/// <summary>
/// Thickness of walls by rays from points spread over the surface by area. First inward along the axis nearest to the
/// normal, which one pass over the mesh answers for all points; then, for the thinnest, straight along the normal. An
/// approximation: walls between the points are missed, and a wedge counts down to nothing at its edge unless it is
/// blunter than
/// <see cref="BluntCosine"/>.
/// </summary>
internal static class WallThickness
{
    /// <summary>Faces that are less opposed than this, at 15° or more, are the sides of an edge, not those of a
    /// wall.</summary>
    private static readonly double BluntCosine = Math.Cos(Math.PI / 12);

    /// <summary>Rays begin this share of the part's size below the surface, clear of rounding.</summary>
    private const double Clearance = 1e-7;

    /// <summary>So many of the thinnest are measured again along their normals. The first answer may be a tenth off
    /// where walls are curved.</summary>
    private const int Refined = 24;

    /// <summary>The second ray ends at this multiple of the first answer.</summary>
    private const double Further = 1.5;

    /// <summary>Thicknesses found, mm.</summary>
    /// <param name="mesh">The part.</param>
    /// <param name="samples">How many points; fewer thicknesses come of them, as some rays meet no opposed
    /// face.</param>
    /// <returns>The thinnest, measured along their normals, in ascending order; and all others, roughly.</returns>
    public static (WallSample[] Thinnest, double[] Others) Sample(Mesh mesh, int samples)
    {
        SurfacePoint[] points = SurfacePoint.Spread(mesh, samples);
        if (points.Length == 0) return ([], []);
        double clear = Clearance * mesh.Bounds.Size.Length;
        RayColumns[] axes = [.. Enumerable.Range(0, 3).Select(axis => new RayColumns(mesh.Bounds, points, axis))];
        RayHit[] askew = FirstHits(mesh, points.Length, (triangle, hits) =>
        {
            foreach (RayColumns axis in axes) axis.Meet(mesh, triangle, clear, hits);
        });
        (double Thickness, SurfacePoint Point)[] found = [.. points.Select((p, i) => (Across(mesh, p, askew[i]), p))
            .Where(f => double.IsFinite(f.Item1)).OrderBy(f => f.Item1).ThenBy(f => f.p.Triangle)];
        SurfacePoint[] thinnest = [.. found.Take(Refined).Select(f => f.Point)];
        TreeBox[] near = [.. found.Take(Refined).Select(f => Reach(f.Point, f.Thickness * Further + clear))];
        RayHit[] straight = FirstHits(mesh, thinnest.Length, (triangle, hits) =>
        {
            (Vec3 a, Vec3 b, Vec3 c) = mesh.Triangle(triangle);
            TreeBox box = new(Vec3.Min(a, Vec3.Min(b, c)), Vec3.Max(a, Vec3.Max(b, c)));
            for (int i = 0; i < near.Length; i++)
                if (near[i].Touches(box)) hits[i] = hits[i].Nearer(Meet(mesh, triangle, thinnest[i], clear));
        });
        IEnumerable<WallSample> again = thinnest.Select((p, i) => new WallSample(
            IsWall(mesh, p, straight[i]) ? straight[i].Distance : found[i].Thickness, p));
        return ([.. again.OrderBy(w => w.ThicknessMm)], [.. found.Skip(Refined).Select(f => f.Thickness)]);
    }

    /// <summary>For each ray the nearest of the hits that <paramref name="meet"/> notes triangle by triangle.</summary>
    private static RayHit[] FirstHits(Mesh mesh, int rays, Action<int, RayHit[]> meet)
    {
        var pieces = new RayHit[Chunks.Count(mesh.TriangleCount)][];
        Chunks.For(mesh.TriangleCount, (from, to) =>
        {
            var own = new RayHit[rays];
            Array.Fill(own, RayHit.None);
            for (int t = from; t < to; t++) meet(t, own);
            pieces[Chunks.Piece(from)] = own;
        });
        var first = new RayHit[rays];
        Array.Fill(first, RayHit.None);
        foreach (RayHit[] piece in pieces)
            for (int i = 0; i < rays; i++) first[i] = first[i].Nearer(piece[i]);
        return first;
    }

    private static TreeBox Reach(SurfacePoint from, double length)
    {
        Vec3 end = from.Position - from.Normal * length;
        return new TreeBox(Vec3.Min(from.Position, end), Vec3.Max(from.Position, end));
    }

    /// <summary>The distance of the two sides of a wall from a ray that runs askew through it; infinite where it is
    /// none. Where sides are curved their cosines differ: the mean is taken.</summary>
    private static double Across(Mesh mesh, SurfacePoint from, RayHit hit)
    {
        if (!IsWall(mesh, from, hit)) return double.PositiveInfinity;
        Vec3 both = from.Normal - Normal(mesh, hit.Triangle);
        return hit.Distance * Math.Abs(RayColumns.Along(both, RayColumns.AxisOf(from.Normal))) / 2;
    }

    private static bool IsWall(Mesh mesh, SurfacePoint from, RayHit hit) =>
        hit.Triangle >= 0 && Normal(mesh, hit.Triangle).Dot(from.Normal) < -BluntCosine;

    private static Vec3 Normal(Mesh mesh, int triangle)
    {
        (Vec3 a, Vec3 b, Vec3 c) = mesh.Triangle(triangle);
        return (b - a).Cross(c - a).Normalized();
    }

    /// <summary>Where the ray straight inward meets a triangle (Möller and Trumbore 1997).</summary>
    private static RayHit Meet(Mesh mesh, int triangle, SurfacePoint ray, double clear)
    {
        if (triangle == ray.Triangle) return RayHit.None;
        (Vec3 a, Vec3 b, Vec3 c) = mesh.Triangle(triangle);
        Vec3 ab = b - a, ac = c - a, across = ac.Cross(ray.Normal);
        double determinant = ab.Dot(across);
        if (determinant == 0) return RayHit.None;
        Vec3 offset = ray.Position - a;
        double u = offset.Dot(across) / determinant;
        if (!(u is >= 0 and <= 1)) return RayHit.None;
        Vec3 q = offset.Cross(ab);
        double v = -ray.Normal.Dot(q) / determinant;
        if (!(v >= 0 && u + v <= 1)) return RayHit.None;
        double distance = ac.Dot(q) / determinant;
        return distance > clear ? new RayHit(distance, triangle) : RayHit.None;
    }
}

/// <summary>A wall at a point of the surface.</summary>
internal readonly record struct WallSample(double ThicknessMm, SurfacePoint Point)
{
    /// <summary>Straight through the wall.</summary>
    public FindingPlace Across => new(Point.Position, Point.Position - Point.Normal * ThicknessMm);
}
