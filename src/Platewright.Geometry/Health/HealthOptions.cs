namespace Platewright.Geometry;

/// <summary>What a mesh is judged by.</summary>
public sealed record HealthOptions
{
    public static readonly HealthOptions Default = new();

    /// <summary>Width of one bead, mm; walls are held against it. Common practice for a 0.4 mm nozzle, no
    /// source.</summary>
    public double BeadWidthMm { get; init; } = 0.45;

    /// <summary>False where the file or the user states the unit: then a doubtful size is said more mildly.</summary>
    public bool UnitIsAssumed { get; init; } = true;

    /// <summary>A part whose largest edge is below this was probably drawn in another unit, mm. A judgement, no
    /// source.</summary>
    public double SmallestPlausibleMm { get; init; } = 3;

    /// <summary>The same for a part above this, mm. A judgement, no source.</summary>
    public double LargestPlausibleMm { get; init; } = 1500;

    /// <summary>How many points of the surface the wall is measured at; 0 leaves it out.</summary>
    public int WallSamples { get; init; } = 1500;

    /// <summary>Meshes with more triangles are not searched for crossing faces; 0 leaves the search out.</summary>
    public int MostTrianglesForCrossings { get; init; } = 250_000;
}
