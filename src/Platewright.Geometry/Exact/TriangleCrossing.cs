namespace Platewright.Geometry;

/// <summary>Do two triangles of a mesh share more than the vertices they have in common? Exact.</summary>
internal static class TriangleCrossing
{
    /// <summary>
    /// True where the triangles meet outside their common vertices or edge. An edge of one that only touches the other
    /// from one side counts as meeting. Triangles with no area never meet anything.
    /// </summary>
    public static bool Of(Mesh mesh, int t, int u)
    {
        ReadOnlySpan<int> corners = mesh.Corners;
        Span<int> p = [corners[3 * t], corners[3 * t + 1], corners[3 * t + 2]];
        Span<int> q = [corners[3 * u], corners[3 * u + 1], corners[3 * u + 2]];
        int common = MoveCommonToFront(p, q);
        ReadOnlySpan<Vec3> v = mesh.Vertices;
        Vec3 a = v[p[0]], b = v[p[1]], c = v[p[2]], d = v[q[0]], e = v[q[1]], f = v[q[2]];
        return common switch
        {
            3 => true,
            2 => Folded(a, b, c, f),
            1 => MeetsBeyond(a, b, c, e, f),
            _ => Apart(a, b, c, d, e, f),
        };
    }

    /// <summary>With a common edge a b, triangles overlap only where they lie on one plane and on one side of the
    /// edge.</summary>
    private static bool Folded(Vec3 a, Vec3 b, Vec3 c, Vec3 f)
    {
        if (Orientation.Of(a, b, c, f) != 0) return false;
        (Vec2 a2, Vec2 b2, Vec2 c2, Vec2 f2) = Flat.Of(a, b, c, f);
        return Orientation.Of(a2, b2, c2) * Orientation.Of(a2, b2, f2) > 0;
    }

    /// <summary>With a common vertex a, they meet elsewhere where the far side of one meets the other.</summary>
    private static bool MeetsBeyond(Vec3 a, Vec3 b, Vec3 c, Vec3 e, Vec3 f) =>
        SegmentMeets(e, f, a, b, c) || SegmentMeets(b, c, a, e, f);

    private static bool Apart(Vec3 a, Vec3 b, Vec3 c, Vec3 d, Vec3 e, Vec3 f) =>
        SegmentMeets(a, b, d, e, f) || SegmentMeets(b, c, d, e, f) || SegmentMeets(c, a, d, e, f)
        || SegmentMeets(d, e, a, b, c) || SegmentMeets(e, f, a, b, c) || SegmentMeets(f, d, a, b, c);

    /// <summary>True where the closed segment p q meets the closed triangle a b c.</summary>
    private static bool SegmentMeets(Vec3 p, Vec3 q, Vec3 a, Vec3 b, Vec3 c)
    {
        int above = Orientation.Of(a, b, c, p), below = Orientation.Of(a, b, c, q);
        if (above * below > 0) return false;
        if (above == 0 && below == 0) return MeetsInPlane(p, q, a, b, c);
        int s = Orientation.Of(p, q, a, b), t = Orientation.Of(p, q, b, c), u = Orientation.Of(p, q, c, a);
        return (s >= 0 && t >= 0 && u >= 0) || (s <= 0 && t <= 0 && u <= 0);
    }

    private static bool MeetsInPlane(Vec3 p, Vec3 q, Vec3 a, Vec3 b, Vec3 c)
    {
        if (Orientation.OnOneLine(a, b, c)) return false;
        (Vec2 a2, Vec2 b2, Vec2 c2, Vec2 p2) = Flat.Of(a, b, c, p);
        (_, _, _, Vec2 q2) = Flat.Of(a, b, c, q);
        return Inside(p2, a2, b2, c2) || Inside(q2, a2, b2, c2)
            || Cross(p2, q2, a2, b2) || Cross(p2, q2, b2, c2) || Cross(p2, q2, c2, a2);
    }

    private static bool Inside(Vec2 p, Vec2 a, Vec2 b, Vec2 c)
    {
        int s = Orientation.Of(a, b, p), t = Orientation.Of(b, c, p), u = Orientation.Of(c, a, p);
        return (s >= 0 && t >= 0 && u >= 0) || (s <= 0 && t <= 0 && u <= 0);
    }

    private static bool Cross(Vec2 p, Vec2 q, Vec2 a, Vec2 b) =>
        Orientation.Of(p, q, a) * Orientation.Of(p, q, b) < 0 && Orientation.Of(a, b, p) * Orientation.Of(a, b, q) < 0;

    private static int MoveCommonToFront(Span<int> p, Span<int> q)
    {
        int common = 0;
        for (int i = 0; i < 3; i++)
        {
            for (int j = common; j < 3; j++)
            {
                if (p[i] != q[j]) continue;
                (p[common], p[i]) = (p[i], p[common]);
                (q[common], q[j]) = (q[j], q[common]);
                common++;
                break;
            }
        }
        return common;
    }

    /// <summary>Coplanar points with one coordinate dropped so that the triangle keeps an area.</summary>
    private static class Flat
    {
        public static (Vec2 A, Vec2 B, Vec2 C, Vec2 P) Of(Vec3 a, Vec3 b, Vec3 c, Vec3 p)
        {
            if (Orientation.Of(Xy(a), Xy(b), Xy(c)) != 0) return (Xy(a), Xy(b), Xy(c), Xy(p));
            if (Orientation.Of(Yz(a), Yz(b), Yz(c)) != 0) return (Yz(a), Yz(b), Yz(c), Yz(p));
            return (Zx(a), Zx(b), Zx(c), Zx(p));
        }

        private static Vec2 Xy(Vec3 p) => new(p.X, p.Y);

        private static Vec2 Yz(Vec3 p) => new(p.Y, p.Z);

        private static Vec2 Zx(Vec3 p) => new(p.Z, p.X);
    }
}
