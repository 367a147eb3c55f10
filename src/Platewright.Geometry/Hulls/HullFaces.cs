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

    private const int None = -1;

    /// <summary>Faces with less area than this share of their length squared are measured without
    /// cancellation.</summary>
    private const double NeedleShare = 1e-4;

    public static ConvexHull Assemble(Vec3[] points, ReadOnlySpan<HullTriangle> triangles)
    {
        bool[] flat = FlatEdges(points, triangles);
        int[] place = Extremes(points, triangles, flat, out Vec3[] vertices);
        int[] label = Connected(triangles, flat);
        int[][] outlines = Outlines(triangles, label, place, label.Max() + 1);
        int[] rank = SortOutlines(outlines);
        for (int t = 0; t < label.Length; t++) label[t] = rank[label[t]];
        HullFace[] exact = [.. outlines.Select(o => Face(vertices, o))];

        int[] merged = FaceMerging.Merge(vertices, exact, Neighbours(triangles, label));
        return new ConvexHull(3, vertices, Joined(triangles, label, place, vertices, exact, merged), exact);
    }

    /// <summary>The exact faces that stay alone and, in place of the others, what they make together.</summary>
    private static HullFace[] Joined(
        ReadOnlySpan<HullTriangle> triangles, int[] label, int[] place, Vec3[] vertices, HullFace[] exact, int[] merged)
    {
        int count = merged.Max() + 1;
        if (count == exact.Length) return exact;
        int[] sizes = new int[count], joined = new int[label.Length];
        foreach (int group in merged) sizes[group]++;
        for (int t = 0; t < joined.Length; t++)
            joined[t] = sizes[merged[label[t]]] == 1 ? None : merged[label[t]];
        int[][] outlines = Outlines(triangles, joined, place, count);
        HullFace[] faces = new HullFace[count];
        for (int f = 0; f < exact.Length; f++)
        {
            int group = merged[f];
            if (sizes[group] == 1) (faces[group], outlines[group]) = (exact[f], (int[])exact[f].Corners);
            else faces[group] ??= Face(vertices, outlines[group]);
        }
        int[] rank = SortOutlines(outlines);
        HullFace[] sorted = new HullFace[count];
        for (int group = 0; group < count; group++) sorted[rank[group]] = faces[group];
        return sorted;
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
    private static int[][] Outlines(ReadOnlySpan<HullTriangle> triangles, int[] label, int[] place, int count)
    {
        int[][] outlines = new int[count][];
        bool[] seen = new bool[3 * triangles.Length];
        List<int> loop = [];
        for (int half = 0; half < seen.Length; half++)
        {
            int own = label[half / 3];
            if (own == None || seen[half] || label[triangles[half / 3].Across(half % 3)] == own) continue;
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

    /// <summary>Sorts outlines by their first edge, which no other face has in that direction.</summary>
    /// <returns>For each old place the new one.</returns>
    private static int[] SortOutlines(int[][] outlines)
    {
        long[] edges = [.. outlines.Select(o => ((long)o[0] << 32) | (uint)o[1])];
        int[] order = [.. Enumerable.Range(0, outlines.Length)], rank = new int[outlines.Length];
        Array.Sort(edges, order);
        int[][] sorted = [.. order.Select(i => outlines[i])];
        sorted.CopyTo(outlines, 0);
        for (int i = 0; i < order.Length; i++) rank[order[i]] = i;
        return rank;
    }

    /// <summary>Pairs of faces that share an edge, each pair both ways, sorted by the first.</summary>
    private static (int Face, int Other)[] Neighbours(ReadOnlySpan<HullTriangle> triangles, int[] label)
    {
        List<ulong> pairs = [];
        for (int t = 0; t < triangles.Length; t++)
            for (int e = 0; e < 3; e++)
            {
                int across = label[triangles[t].Across(e)];
                if (across != label[t]) pairs.Add(((ulong)label[t] << 32) | (uint)across);
            }
        pairs.Sort();
        return [.. pairs.Select(p => ((int)(p >> 32), (int)(uint)p))];
    }
}
