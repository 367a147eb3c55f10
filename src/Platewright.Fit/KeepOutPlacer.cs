using Platewright.Fit.Planar;
using Platewright.Geometry;

namespace Platewright.Fit;

/// <summary>
/// Finds where on the surface a part of given rotation and scale stays within the walls and out of the keep-out boxes. A box
/// matters only to the slice of the part between its bottom and its top; that slice's outline, turned over, grown by the
/// box, is where the part may not be put.
/// </summary>
internal sealed class KeepOutPlacer(PreparedPart part, UsableVolume volume, double brimMm)
{
    private const int AnglesTried = 48;
    private const int Halvings = 40;

    // A round surface is taken as this many straight walls inside it: what is found is certain to fit.
    private const int RoundSides = 90;
    private readonly (Vec2 Normal, double Offset)[] _walls = WallsOf(volume.Surface);
    private readonly (int A, int B)[] _edges = EdgesOf(part.Shape.Hull);

    /// <summary>The angles to try: the best one without keep-outs first, then all round.</summary>
    public static double[] AnglesFrom(double best) =>
        [.. Enumerable.Range(0, AnglesTried).Select(k => best + k * 2 * Math.PI / AnglesTried)];

    /// <summary>The largest scale above <paramref name="above"/> and up to <paramref name="most"/> that finds a place.</summary>
    public WayOfFitting? Largest(Rotation rotation, double most, double above)
    {
        if (Find(rotation, most) is { } whole) return new WayOfFitting(most, whole);
        double low = above, high = most;
        Pose? found = above > 0 ? Find(rotation, low * (1 + 1e-9)) : null;
        if (above > 0 && found is null) return null;
        for (int i = 0; i < Halvings && high - low > 1e-9 * high; i++)
        {
            double middle = (low + high) / 2;
            if (Find(rotation, middle) is { } pose) (low, found) = (middle, pose);
            else high = middle;
        }
        return found is null ? null : new WayOfFitting(low, found);
    }

    /// <summary>A pose at this rotation and scale (of the drawn part), or null where there is none.</summary>
    public Pose? Find(Rotation rotation, double scale)
    {
        double built = scale * part.Growth;
        Matrix3 r = rotation.ToMatrix() * built;
        Vec3[] body = Array.ConvertAll(part.Grid.Vertices.ToArray(), r.Apply);
        double low = body.Min(p => p.Z), high = body.Max(p => p.Z);
        if (high - low > volume.HeightMm * (1 + Tolerances.UnitScale)) return null;
        for (int i = 0; i < body.Length; i++) body[i] -= new Vec3(0, 0, low);
        List<Vec2>? places = Allowed(body);
        if (places is null) return null;
        List<List<Vec2>> forbidden = [.. volume.KeepOuts.Select(box => Forbidden(body, box)).OfType<List<Vec2>>()];
        foreach (Vec2 t in Candidates(places, forbidden))
            if (IsAllowed(t, body) && !forbidden.Exists(f => IsInside(f, t)))
                return new Pose(built, rotation, new Vec3(t.X, t.Y, -low));
        return null;
    }

    private static (Vec2, double)[] WallsOf(Surface surface)
    {
        if (surface is not RoundSurface round) return [.. surface.Walls];
        double apothem = round.RadiusMm * Math.Cos(Math.PI / RoundSides);
        return [.. Enumerable.Range(0, RoundSides).Select(k => 2 * Math.PI * k / RoundSides)
            .Select(a => (new Vec2(Math.Cos(a), Math.Sin(a)), apothem))];
    }

    private static (int, int)[] EdgesOf(ConvexHull hull)
    {
        if (hull.Dimension == 1) return [(0, 1)];
        var edges = new HashSet<(int, int)>();
        foreach (HullFace face in hull.Faces)
            for (int i = 0; i < face.Corners.Count; i++)
            {
                int a = face.Corners[i], b = face.Corners[(i + 1) % face.Corners.Count];
                edges.Add((Math.Min(a, b), Math.Max(a, b)));
            }
        return [.. edges];
    }

    // Where the part's origin may be so that the body is within the walls and the contact a brim further inside.
    private List<Vec2>? Allowed(Vec3[] body)
    {
        double large = 4 * (_walls.Max(w => Math.Abs(w.Offset)) + body.Max(p => p.Length));
        List<Vec2> places = [new(-large, -large), new(large, -large), new(large, large), new(-large, large)];
        foreach ((Vec2 n, double c) in _walls)
        {
            places = PolygonWalls.ClippedBy(places, n, c - Reach(body, n) + Tolerances.PlacementMm);
            if (places.Count == 0) return null;
        }
        return places;
    }

    private double Reach(Vec3[] body, Vec2 n)
    {
        double most = double.NegativeInfinity;
        foreach (Vec3 p in body)
        {
            double reach = n.X * p.X + n.Y * p.Y;
            if (p.Z <= Tolerances.ContactBandMm) reach += brimMm;
            most = Math.Max(most, reach);
        }
        return most;
    }

    // The box grown by the turned-over outline of the slice of the body beside it.
    private List<Vec2>? Forbidden(Vec3[] body, Bounds3 box)
    {
        var slice = new List<Vec2>();
        double from = box.Min.Z, to = box.Max.Z;
        foreach (Vec3 p in body)
            if (p.Z > from && p.Z < to || p.Z == 0 && from <= 0) slice.Add(new Vec2(p.X, p.Y));
        foreach ((int a, int b) in _edges)
        {
            AddCrossing(slice, body[a], body[b], from);
            AddCrossing(slice, body[a], body[b], to);
        }
        if (slice.Count == 0) return null;
        double brim = from <= 0 ? brimMm : 0;
        var grown = new List<Vec2>();
        foreach (Vec2 p in slice)
        {
            grown.Add(new Vec2(box.Min.X - p.X, box.Min.Y - p.Y));
            grown.Add(new Vec2(box.Max.X - p.X, box.Min.Y - p.Y));
            grown.Add(new Vec2(box.Max.X - p.X, box.Max.Y - p.Y));
            grown.Add(new Vec2(box.Min.X - p.X, box.Max.Y - p.Y));
        }
        if (brim > 0)
            foreach (Vec3 p in body)
            {
                if (p.Z > Tolerances.ContactBandMm) continue;
                grown.Add(new Vec2(box.Min.X - p.X - brim, box.Min.Y - p.Y - brim));
                grown.Add(new Vec2(box.Max.X - p.X + brim, box.Min.Y - p.Y - brim));
                grown.Add(new Vec2(box.Max.X - p.X + brim, box.Max.Y - p.Y + brim));
                grown.Add(new Vec2(box.Min.X - p.X - brim, box.Max.Y - p.Y + brim));
            }
        return [.. ConvexPolygon.Of(grown.ToArray())];
    }

    private static void AddCrossing(List<Vec2> slice, Vec3 a, Vec3 b, double z)
    {
        if ((a.Z - z) * (b.Z - z) >= 0) return;
        double k = (z - a.Z) / (b.Z - a.Z);
        slice.Add(new Vec2(a.X + k * (b.X - a.X), a.Y + k * (b.Y - a.Y)));
    }

    private bool IsAllowed(Vec2 t, Vec3[] body)
    {
        foreach ((Vec2 n, double c) in _walls)
            if (n.Dot(t) > c - Reach(body, n) + 2 * Tolerances.PlacementMm) return false;
        return true;
    }

    // If any place is allowed, one of these is: the allowed region's own corners, where its outline meets a forbidden
    // one, or where two forbidden outlines meet.
    private static IEnumerable<Vec2> Candidates(List<Vec2> places, List<List<Vec2>> forbidden)
    {
        Vec2 middle = default;
        foreach (Vec2 p in places) middle += p / places.Count;
        yield return middle;
        foreach (Vec2 p in places) yield return p;
        for (int i = 0; i < forbidden.Count; i++)
        {
            foreach (Vec2 p in forbidden[i]) yield return p;
            foreach (Vec2 p in Crossings(places, forbidden[i])) yield return p;
            for (int j = 0; j < i; j++)
                foreach (Vec2 p in Crossings(forbidden[j], forbidden[i])) yield return p;
        }
    }

    private static IEnumerable<Vec2> Crossings(List<Vec2> one, List<Vec2> other)
    {
        for (int i = 0; i < one.Count; i++)
        {
            Vec2 p = one[i], u = one[(i + 1) % one.Count] - p;
            for (int j = 0; j < other.Count; j++)
            {
                Vec2 q = other[j], v = other[(j + 1) % other.Count] - q;
                double cross = u.Cross(v);
                if (cross == 0) continue;
                double s = (q - p).Cross(v) / cross, k = (q - p).Cross(u) / cross;
                if (s is >= 0 and <= 1 && k is >= 0 and <= 1) yield return p + u * s;
            }
        }
    }

    // Strictly inside by more than rounding: touching a keep-out is allowed.
    private static bool IsInside(List<Vec2> polygon, Vec2 p)
    {
        if (polygon.Count < 3) return false;
        for (int i = 0; i < polygon.Count; i++)
        {
            Vec2 a = polygon[i], edge = polygon[(i + 1) % polygon.Count] - a;
            if (edge.Cross(p - a) <= Tolerances.PlacementMm * edge.Length) return false;
        }
        return true;
    }
}
