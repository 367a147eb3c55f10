namespace Platewright.Geometry;

/// <summary>
/// From the triangles of a hull to its extreme points and faces. Two stages: triangles that are exactly coplanar make
/// the exact faces; exact faces that only the rounding of a file keeps apart are then merged into faces to rest on.
/// </summary>
internal static class HullFaces
{
    /// <summary>
    /// A merged face keeps all its corners within this share of the largest coordinate from the plane of its largest
    /// exact face: sixteen times the rounding of single precision, the precision of most mesh files.
    /// </summary>
    public const double Flatness = 1.0 / (1 << 20);

    /// <summary>Cosine of the widest angle, 30°, at which a sliver may join a face it lies in by <see
    /// cref="Flatness"/>.</summary>
    private static readonly double JoinCosine = Math.Sqrt(0.75);

    /// <summary>Faces with less area than this share of their length squared are measured without
    /// cancellation.</summary>
    private const double NeedleShare = 1e-4;

    public static ConvexHull Assemble(Vec3[] points, ReadOnlySpan<HullTriangle> triangles)
    {
        bool[] flat = FlatEdges(points, triangles);
        int[] place = Extremes(points, triangles, flat, out Vec3[] vertices);
        int[] label = Connected(triangles, flat);
        int[][] outlines = Outlines(triangles, label, place);
        int[] canonical = [.. Enumerable.Range(0, outlines.Length)];
        Array.Sort(canonical, (i, j) => CompareOutlines(outlines[i], outlines[j]));
        HullFace[] exact = [.. canonical.Select(i => Face(vertices, outlines[i]))];
        int[] rank = new int[canonical.Length];
        for (int i = 0; i < rank.Length; i++) rank[canonical[i]] = i;
        for (int t = 0; t < label.Length; t++) label[t] = rank[label[t]];

        int[] merged = Merge(vertices, exact, Neighbours(triangles, label, exact.Length));
        if (merged.Max() + 1 == exact.Length) return new ConvexHull(3, vertices, exact, exact);
        int[] joined = [.. label.Select(l => merged[l])];
        int[][] wide = Outlines(triangles, joined, place);
        Array.Sort(wide, CompareOutlines);
        return new ConvexHull(3, vertices, [.. wide.Select(o => Face(vertices, o))], exact);
    }

    /// <summary>The face with these corners: normal by Newell's sum, offset so that no corner lies above the
    /// plane.</summary>
    public static HullFace Face(Vec3[] vertices, int[] corners)
    {
        Vec3 origin = vertices[corners[0]], twice = default;
        double around = 0;
        for (int i = 2; i < corners.Length; i++)
        {
            Vec3 b = vertices[corners[i - 1]] - origin, c = vertices[corners[i]] - origin;
            twice += b.Cross(c);
            around = Math.Max(around, Math.Max(b.Length, c.Length));
        }
        if (!(twice.Length > NeedleShare * around * around)) twice = ExactTwice(vertices, corners);
        Vec3 normal = twice.Normalized();
        double offset = double.NegativeInfinity;
        foreach (int corner in corners) offset = Math.Max(offset, normal.Dot(vertices[corner]));
        return new HullFace(normal, offset, corners) { AreaMm2 = twice.Length / 2 };
    }

    private static Vec3 ExactTwice(Vec3[] vertices, int[] corners)
    {
        Vec3 twice = default;
        for (int i = 2; i < corners.Length; i++)
            twice += Orientation.Cross(vertices[corners[0]], vertices[corners[i - 1]], vertices[corners[i]]);
        return twice;
    }

    /// <summary>The same point with −0 made 0, so that equal inputs give equal bits.</summary>
    public static Vec3 Positive(Vec3 p) => new(p.X + 0.0, p.Y + 0.0, p.Z + 0.0);

    private static bool[] FlatEdges(Vec3[] points, ReadOnlySpan<HullTriangle> triangles)
    {
        bool[] flat = new bool[3 * triangles.Length];
        for (int t = 0; t < triangles.Length; t++)
        {
            HullTriangle own = triangles[t];
            for (int e = 0; e < 3; e++)
            {
                int across = own.Across(e);
                if (across < t) continue;
                HullTriangle other = triangles[across];
                int back = other.EdgeFrom(own.Corner((e + 1) % 3));
                Vec3 beyond = points[other.Corner((back + 2) % 3)];
                bool level = Orientation.Of(points[own.A], points[own.B], points[own.C], beyond) == 0;
                flat[3 * t + e] = flat[3 * across + back] = level;
            }
        }
        return flat;
    }

    /// <summary>Points where three or more planes meet are extreme; on an edge two meet, inside a face one.</summary>
    private static int[] Extremes(
        Vec3[] points, ReadOnlySpan<HullTriangle> triangles, bool[] flat, out Vec3[] vertices)
    {
        int[] creases = new int[points.Length];
        for (int t = 0; t < triangles.Length; t++)
            for (int e = 0; e < 3; e++)
                if (!flat[3 * t + e]) creases[triangles[t].Corner(e)]++;
        List<int> extreme = [];
        for (int p = 0; p < points.Length; p++)
            if (creases[p] >= 3) extreme.Add(p);
        extreme.Sort((p, q) => HullSeed.Compare(points[p], points[q]));
        int[] place = new int[points.Length];
        Array.Fill(place, -1);
        vertices = new Vec3[extreme.Count];
        for (int i = 0; i < vertices.Length; i++)
        {
            vertices[i] = Positive(points[extreme[i]]);
            place[extreme[i]] = i;
        }
        return place;
    }

    private static int[] Connected(ReadOnlySpan<HullTriangle> triangles, bool[] flat)
    {
        int[] label = new int[triangles.Length];
        Array.Fill(label, -1);
        int count = 0;
        Stack<int> open = new();
        for (int start = 0; start < label.Length; start++)
        {
            if (label[start] >= 0) continue;
            label[start] = count;
            open.Push(start);
            while (open.TryPop(out int t))
            {
                for (int e = 0; e < 3; e++)
                {
                    int across = triangles[t].Across(e);
                    if (!flat[3 * t + e] || label[across] >= 0) continue;
                    label[across] = count;
                    open.Push(across);
                }
            }
            count++;
        }
        return label;
    }

    /// <summary>For each label the corners around its triangles, first the smallest; of several loops the
    /// longest.</summary>
    private static int[][] Outlines(ReadOnlySpan<HullTriangle> triangles, int[] label, int[] place)
    {
        int[][] outlines = new int[label.Max() + 1][];
        bool[] seen = new bool[3 * triangles.Length];
        List<int> loop = [];
        for (int half = 0; half < seen.Length; half++)
        {
            int own = label[half / 3];
            if (seen[half] || label[triangles[half / 3].Across(half % 3)] == own) continue;
            loop.Clear();
            for (int at = half; !seen[at]; at = NextOnOutline(triangles, label, at))
            {
                seen[at] = true;
                int corner = place[triangles[at / 3].Corner(at % 3)];
                if (corner >= 0) loop.Add(corner);
            }
            if (outlines[own] is null || loop.Count > outlines[own].Length) outlines[own] = FromSmallest(loop);
        }
        return outlines;
    }

    private static int NextOnOutline(ReadOnlySpan<HullTriangle> triangles, int[] label, int half)
    {
        int own = label[half / 3];
        int next = half % 3 == 2 ? half - 2 : half + 1;
        while (true)
        {
            HullTriangle t = triangles[next / 3];
            int across = t.Across(next % 3);
            if (label[across] != own) return next;
            int back = triangles[across].EdgeFrom(t.Corner((next % 3 + 1) % 3));
            next = 3 * across + (back + 1) % 3;
        }
    }

    private static int[] FromSmallest(List<int> loop)
    {
        int start = loop.IndexOf(loop.Min());
        int[] turned = new int[loop.Count];
        for (int i = 0; i < turned.Length; i++) turned[i] = loop[(start + i) % turned.Length];
        return turned;
    }

    private static int CompareOutlines(int[] a, int[] b)
    {
        int common = Math.Min(a.Length, b.Length);
        for (int i = 0; i < common; i++)
            if (a[i] != b[i]) return a[i].CompareTo(b[i]);
        return a.Length.CompareTo(b.Length);
    }

    private static List<int>[] Neighbours(ReadOnlySpan<HullTriangle> triangles, int[] label, int count)
    {
        List<int>[] neighbours = new List<int>[count];
        for (int f = 0; f < count; f++) neighbours[f] = [];
        for (int t = 0; t < triangles.Length; t++)
            for (int e = 0; e < 3; e++)
            {
                int across = label[triangles[t].Across(e)];
                if (across != label[t]) neighbours[label[t]].Add(across);
            }
        return neighbours;
    }

    /// <summary>Largest faces first, each takes in the connected faces that lie in its plane but for
    /// rounding.</summary>
    private static int[] Merge(Vec3[] vertices, HullFace[] faces, List<int>[] neighbours)
    {
        double reach = 0;
        foreach (Vec3 v in vertices)
            reach = Math.Max(reach, Math.Max(Math.Abs(v.X), Math.Max(Math.Abs(v.Y), Math.Abs(v.Z))));
        double tolerance = Flatness * reach;
        int[] seeds = [.. Enumerable.Range(0, faces.Length)];
        Array.Sort(seeds, (i, j) => faces[i].AreaMm2 != faces[j].AreaMm2
            ? faces[j].AreaMm2.CompareTo(faces[i].AreaMm2) : i.CompareTo(j));
        int[] merged = new int[faces.Length];
        Array.Fill(merged, -1);
        int count = 0;
        Stack<int> open = new();
        foreach (int seed in seeds)
        {
            if (merged[seed] >= 0) continue;
            merged[seed] = count;
            open.Push(seed);
            while (open.TryPop(out int f))
            {
                foreach (int n in neighbours[f])
                {
                    if (merged[n] >= 0 || !LiesIn(vertices, faces[n], faces[seed], tolerance)) continue;
                    merged[n] = count;
                    open.Push(n);
                }
            }
            count++;
        }
        return merged;
    }

    private static bool LiesIn(Vec3[] vertices, HullFace face, HullFace plane, double tolerance)
    {
        if (face.Normal.Dot(plane.Normal) < JoinCosine) return false;
        foreach (int corner in face.Corners)
            if (plane.Normal.Dot(vertices[corner]) < plane.OffsetMm - tolerance) return false;
        return true;
    }
}
