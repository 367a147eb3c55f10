namespace Platewright.Geometry;

/// <summary>Joins the exact faces of a hull that only the rounding of a file keeps apart.</summary>
internal static class FaceMerging
{
    /// <summary>Cosine of the widest angle, 30°, at which a sliver may join a face it lies in by
    /// <see cref="HullFaces.Flatness"/>.</summary>
    private static readonly double JoinCosine = Math.Sqrt(0.75);

    /// <summary>Largest faces first, each takes in the connected faces that lie in its plane but for
    /// rounding.</summary>
    /// <returns>For each face the number of the face it becomes part of.</returns>
    public static int[] Merge(Vec3[] vertices, HullFace[] faces, (int Face, int Other)[] neighbours)
    {
        double reach = 0;
        foreach (Vec3 v in vertices)
            reach = Math.Max(reach, Math.Max(Math.Abs(v.X), Math.Max(Math.Abs(v.Y), Math.Abs(v.Z))));
        double tolerance = HullFaces.Flatness * reach;
        int[] begin = new int[faces.Length + 1], merged = new int[faces.Length];
        foreach ((int face, _) in neighbours) begin[face + 1]++;
        for (int f = 0; f < faces.Length; f++) begin[f + 1] += begin[f];
        Array.Fill(merged, -1);
        int count = 0;
        Stack<int> open = new();
        foreach (int seed in LargestFirst(faces))
        {
            if (merged[seed] >= 0) continue;
            merged[seed] = count;
            open.Push(seed);
            while (open.TryPop(out int f))
            {
                for (int i = begin[f]; i < begin[f + 1]; i++)
                {
                    int n = neighbours[i].Other;
                    if (merged[n] >= 0 || !LiesIn(vertices, faces[n], faces[seed], tolerance)) continue;
                    merged[n] = count;
                    open.Push(n);
                }
            }
            count++;
        }
        return merged;
    }

    private static int[] LargestFirst(HullFace[] faces)
    {
        (double Area, int Face)[] keys = [.. faces.Select((f, i) => (-f.AreaMm2, i))];
        Array.Sort(keys);
        return [.. keys.Select(k => k.Face)];
    }

    private static bool LiesIn(Vec3[] vertices, HullFace face, HullFace plane, double tolerance)
    {
        if (face.Normal.Dot(plane.Normal) < JoinCosine) return false;
        foreach (int corner in face.Corners)
            if (plane.Normal.Dot(vertices[corner]) < plane.OffsetMm - tolerance) return false;
        return true;
    }
}
