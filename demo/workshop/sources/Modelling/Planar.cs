using Platewright.Geometry;

namespace Platewright.Demo.Modelling;

/// <summary>Fills flat faces with triangles that use every point of their rings and no other.</summary>
internal static class Planar
{
    /// <summary>Relative; far above rounding, far below any triangle one could see missing.</summary>
    private const double AreaTolerance = 1e-7;

    /// <summary>
    /// Adds the face that these rings of vertices bound. Seen against the frame's normal outlines run
    /// counter-clockwise and holes clockwise; several outlines make several faces.
    /// </summary>
    /// <exception cref="ArgumentException">
    /// A ring lies in no outline, or the triangles do not cover the face.
    /// </exception>
    public static void Fill(Solid solid, Frame frame, IReadOnlyList<int[]> rings)
    {
        List<(int[] Ring, Vec2[] Flat, double Area)> all =
            [.. rings.Select(r => (Ring: r, Flat: r.Select(v => frame.Flat(solid.At(v))).ToArray()))
                .Select(r => (r.Ring, r.Flat, Rings.Area(r.Flat)))];
        var outlines = all.Where(r => r.Area > 0).OrderBy(r => r.Area).ToList();
        var holesOf = outlines.Select(_ => new List<(int[] Ring, Vec2[] Flat, double Area)>()).ToList();
        foreach (var hole in all.Where(r => r.Area <= 0))
        {
            int around = outlines.FindIndex(o => -hole.Area < o.Area && Rings.Holds(o.Flat, hole.Flat[0]));
            if (around < 0) throw new ArgumentException($"A hole at {hole.Flat[0]} lies in no outline.", nameof(rings));
            holesOf[around].Add(hole);
        }
        for (int i = 0; i < outlines.Count; i++)
        {
            int[] vertices = [.. outlines[i].Ring, .. holesOf[i].SelectMany(h => h.Ring)];
            List<Triangle> triangles = EarClipping.Fill(outlines[i].Flat, [.. holesOf[i].Select(h => h.Flat)]);
            Vec2[] flat = [.. outlines[i].Flat, .. holesOf[i].SelectMany(h => h.Flat)];
            double area = outlines[i].Area + holesOf[i].Sum(h => h.Area);
            double covered = triangles.Sum(t => EarClipping.Turn(flat[t.A], flat[t.B], flat[t.C]) / 2);
            if (Math.Abs(covered - area) > AreaTolerance * (1 + outlines[i].Area))
                throw new ArgumentException($"Triangles cover {covered:0.####} of {area:0.####} mm².", nameof(rings));
            foreach (Triangle t in triangles) solid.Add(vertices[t.A], vertices[t.B], vertices[t.C]);
        }
    }
}
