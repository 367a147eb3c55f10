namespace Platewright.Geometry;

/// <summary>The hull of points that lie exactly on one plane: a polygon with two sides.</summary>
internal static class FlatHull
{
    public static ConvexHull Of(ReadOnlySpan<Vec3> points, int[] seed)
    {
        (Vec3 a, Vec3 b, Vec3 c) = (points[seed[0]], points[seed[1]], points[seed[2]]);
        // Dropping a coordinate keeps what is convex as long as the plane does not stand on edge that way.
        Func<Vec3, Vec2> drop = Orientation.Of(Xy(a), Xy(b), Xy(c)) != 0 ? Xy
            : Orientation.Of(Yz(a), Yz(b), Yz(c)) != 0 ? Yz : Zx;
        var flat = new Vec2[points.Length];
        for (int i = 0; i < flat.Length; i++) flat[i] = drop(points[i]);
        int[] around = ConvexPolygon.Corners(flat);
        Vec3[] corners = [.. around.Select(At(points))];
        int[] order = [.. Enumerable.Range(0, corners.Length)];
        Array.Sort(order, (i, j) => HullSeed.Compare(corners[i], corners[j]));
        int[] place = new int[order.Length];
        for (int i = 0; i < order.Length; i++) place[order[i]] = i;
        Vec3[] vertices = [.. order.Select(i => corners[i])];
        int start = Array.IndexOf(place, 0);
        int[] front = [.. Enumerable.Range(0, place.Length).Select(i => place[(start + i) % place.Length])];
        int[] back = [front[0], .. front.Skip(1).Reverse()];
        HullFace[] sides = [HullFaces.Face(vertices, front), HullFaces.Face(vertices, back)];
        return new ConvexHull(2, vertices, sides, sides);
    }

    private static Func<int, Vec3> At(ReadOnlySpan<Vec3> points)
    {
        Vec3[] copy = points.ToArray();
        return i => HullFaces.Positive(copy[i]);
    }

    private static Vec2 Xy(Vec3 p) => new(p.X, p.Y);

    private static Vec2 Yz(Vec3 p) => new(p.Y, p.Z);

    private static Vec2 Zx(Vec3 p) => new(p.Z, p.X);
}
