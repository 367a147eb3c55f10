namespace Platewright.Geometry;

/// <summary>
/// What tells whether two parts are one shape, wherever they lie, however they are turned and at whatever size: small
/// enough to keep for every part. Everything is taken about the centre of the surface and in units of the square root
/// of its area, so that size drops out; the moments keep the orientation, so that a mirror can be told from a turn.
/// </summary>
public sealed record ShapeSignature
{
    private const int HistogramSamples = 2000;
    private const int HistogramBins = 16;

    /// <summary>Points kept of a hull with more vertices: those extreme in as many evenly spread directions.</summary>
    private const int MostHullPoints = 2000;

    /// <summary>Surface, mm²: the only number with a size.</summary>
    public required double AreaMm2 { get; init; }

    /// <summary>Volume over area^1.5; 0 where the mesh encloses none.</summary>
    public required double VolumeShare { get; init; }

    /// <summary>Volume of the hull over area^1.5.</summary>
    public required double HullVolumeShare { get; init; }

    /// <summary>Surface of the hull over the area.</summary>
    public required double HullAreaShare { get; init; }

    /// <summary>Main moments of the surface, largest first.</summary>
    public required Vec3 Spread { get; init; }

    /// <summary>The second, third and fourth moments of the surface by monomial (<see
    /// cref="SurfaceMoments"/>).</summary>
    public required IReadOnlyList<double> Moments { get; init; }

    /// <summary>Share of the surface by its distance from the centre, from 0 to the largest.</summary>
    public required IReadOnlyList<double> Histogram { get; init; }

    /// <summary>Extreme points of the hull.</summary>
    public required IReadOnlyList<Vec3> HullPoints { get; init; }

    /// <summary>The signature of a mesh; null where it has no area.</summary>
    /// <param name="mesh">The part, with distinct vertices.</param>
    /// <param name="hull">Its hull.</param>
    public static ShapeSignature? Of(Mesh mesh, ConvexHull hull)
    {
        MeshMeasures measures = MeshMeasures.Of(mesh);
        if (!(measures.AreaMm2 > 0) || !double.IsFinite(measures.AreaMm2)) return null;
        double unit = Math.Sqrt(measures.AreaMm2);
        SurfaceMoments moments = SurfaceMoments.Of(mesh, measures.SurfaceCentre, unit);
        bool encloses = MeshTopology.Of(mesh).IsBalanced;
        return new ShapeSignature
        {
            AreaMm2 = measures.AreaMm2,
            VolumeShare = encloses ? Math.Abs(measures.SignedVolumeMm3) / Math.Pow(unit, 3) : 0,
            HullVolumeShare = hull.VolumeMm3 / Math.Pow(unit, 3),
            HullAreaShare = hull.AreaMm2 / measures.AreaMm2,
            Spread = SymmetricMatrix.Eigenvalues(moments.Second()),
            Moments = moments.Values,
            Histogram = Distances(mesh, measures.SurfaceCentre),
            HullPoints = [.. Extremes(hull).Select(v => (v - measures.SurfaceCentre) / unit)],
        };
    }

    private static double[] Distances(Mesh mesh, Vec3 centre)
    {
        var shares = new double[HistogramBins];
        double[] distances = [.. SurfacePoint.Spread(mesh, HistogramSamples).Select(p => (p.Position - centre).Length)];
        double largest = mesh.VertexArray.Max(v => (v - centre).Length);
        foreach (double d in distances)
        {
            // Each point is shared between two bins, so that a hair's difference does not move it whole.
            double at = Math.Clamp(d / largest * HistogramBins - 0.5, 0, HistogramBins - 1);
            int low = Math.Min((int)at, HistogramBins - 2);
            shares[low] += (1 - (at - low)) / distances.Length;
            shares[low + 1] += (at - low) / distances.Length;
        }
        return shares;
    }

    private static IEnumerable<Vec3> Extremes(ConvexHull hull)
    {
        Vec3[] vertices = hull.Vertices.ToArray();
        if (vertices.Length <= MostHullPoints) return vertices;
        HashSet<int> extreme = [];
        foreach (Vec3 u in Frame.Spiral(MostHullPoints))
        {
            int best = 0;
            for (int i = 1; i < vertices.Length; i++)
                if (u.Dot(vertices[i]) > u.Dot(vertices[best])) best = i;
            extreme.Add(best);
        }
        return extreme.Order().Select(i => vertices[i]);
    }
}
