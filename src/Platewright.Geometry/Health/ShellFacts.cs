namespace Platewright.Geometry;

/// <summary>One shell of a mesh.</summary>
/// <param name="Triangles">Its triangles.</param>
/// <param name="Bounds">The box around them.</param>
/// <param name="SignedVolumeMm3">Signed tetrahedra from the middle of that box, mm³.</param>
/// <param name="IsBalanced">Its edges are used as often either way, so that it has an inside.</param>
internal sealed record ShellFacts(int[] Triangles, Bounds3 Bounds, double SignedVolumeMm3, bool IsBalanced)
{
    public static ShellFacts[] Of(Mesh mesh, MeshTopology topology)
    {
        ReadOnlySpan<int> labels = topology.Shells;
        int[] begin = new int[topology.ShellCount + 1];
        foreach (int label in labels)
            if (label >= 0) begin[label + 1]++;
        for (int s = 0; s < topology.ShellCount; s++) begin[s + 1] += begin[s];
        int[] place = begin[..^1], sorted = new int[begin[^1]];
        for (int t = 0; t < labels.Length; t++)
            if (labels[t] >= 0) sorted[place[labels[t]]++] = t;
        ShellFacts[] shells = new ShellFacts[topology.ShellCount];
        for (int s = 0; s < shells.Length; s++) shells[s] = Of(mesh, topology, sorted[begin[s]..begin[s + 1]]);
        return shells;
    }

    /// <summary>
    /// How often the shell winds around a point, by the sum of the angles its triangles fill (van Oosterom and Strackee
    /// 1983): about 1 inside an outward shell, −1 inside an inward one, 0 outside.
    /// </summary>
    public double WindingAround(Mesh mesh, Vec3 point)
    {
        double sum = 0;
        foreach (int t in Triangles)
        {
            (Vec3 a, Vec3 b, Vec3 c) = mesh.Triangle(t);
            (a, b, c) = (a - point, b - point, c - point);
            double x = a.Length, y = b.Length, z = c.Length;
            double below = x * y * z + a.Dot(b) * z + b.Dot(c) * x + c.Dot(a) * y;
            sum += Math.Atan2(a.Dot(b.Cross(c)), below);
        }
        return sum / (2 * Math.PI);
    }

    private static ShellFacts Of(Mesh mesh, MeshTopology topology, int[] triangles)
    {
        Bounds3 box = Bounds3.Empty;
        bool balanced = true;
        foreach (int t in triangles)
        {
            (Vec3 a, Vec3 b, Vec3 c) = mesh.Triangle(t);
            box = box.Including(a).Including(b).Including(c);
            for (int half = 3 * t; half < 3 * t + 3; half++)
                balanced &= topology.Mates[half] is >= 0 or MeshTopology.CrowdedEdge;
        }
        Vec3 origin = box.Center;
        double six = 0;
        foreach (int t in triangles)
        {
            (Vec3 a, Vec3 b, Vec3 c) = mesh.Triangle(t);
            six += (a - origin).Dot((b - origin).Cross(c - origin));
        }
        return new ShellFacts(triangles, box, six / 6, balanced && (topology.CrowdedEdges == 0 || topology.IsBalanced));
    }
}
