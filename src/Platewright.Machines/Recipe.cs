namespace Platewright.Machines;

/// <summary>What quality a part is wanted in. A machine may be slower; the slower of the two wins.</summary>
public sealed record Recipe
{
    public required string Name { get; init; }

    /// <summary>The name in small letters with hyphens, as <c>quick-check</c>.</summary>
    public string Id => NameId.Of(Name);

    /// <summary>What such a part is for, as a sentence.</summary>
    public string? Purpose { get; init; }

    /// <summary>Layer height, mm.</summary>
    public required double LayerHeightMm { get; init; }

    /// <summary>Bead width, mm; at least the layer height.</summary>
    public required double BeadWidthMm { get; init; }

    /// <summary>Beads around every outline, 0 … 50.</summary>
    public required int Walls { get; init; }

    /// <summary>Solid layers below every top and above every bottom face, 0 for none.</summary>
    public required int SolidLayers { get; init; }

    /// <summary>Share of the inside that is filled, 0 … 1.</summary>
    public required double InfillShare { get; init; }

    public InfillPattern InfillPattern { get; init; } = InfillPattern.Lines;

    /// <summary>Whether overhangs are supported.</summary>
    public bool Support { get; init; }

    /// <summary>Greatest overhang from the vertical that needs no support, degrees, 0 … 89.</summary>
    public double OverhangAngleDeg { get; init; } = 45;

    /// <summary>Share of a support that is filled, 0 … 1.</summary>
    public double SupportShare { get; init; } = 0.15;

    /// <summary>Width of the brim, mm; null takes the material's.</summary>
    public double? BrimMm { get; init; } = 0;

    public required PathSpeeds Speeds { get; init; }

    /// <summary>Least time of a layer, s; 0 for none, null takes the material's.</summary>
    public double? MinimumLayerTimeS { get; init; } = 0;

    /// <summary>Name of the material a part gets where nothing else names one; null leaves that open.</summary>
    public string? Material { get; init; }

    /// <summary>True for the bundled recipes.</summary>
    public bool Bundled { get; init; }

    public double BrimFor(Material material) => BrimMm ?? material.BrimMm;

    public double MinimumLayerTimeFor(Material material) => MinimumLayerTimeS ?? material.MinimumLayerTimeS;
}

/// <summary>How the inside of a part is filled.</summary>
public enum InfillPattern
{
    /// <summary>Straight lines, turned by a right angle from layer to layer.</summary>
    Lines,

    /// <summary>Lines both ways in every layer.</summary>
    Grid,

    /// <summary>Lines three ways in every layer, 60° apart.</summary>
    Triangles,

    /// <summary>The gyroid, a surface that is curved in all three directions.</summary>
    Gyroid,
}

/// <summary>Wished speed of each kind of path, mm/s. Travel of null is as fast as the machine can.</summary>
public sealed record PathSpeeds(
    double Walls, double SolidFaces, double Infill, double Support, double Brim, double? Travel)
{
    /// <summary>The same speed for every kind of path, travel included.</summary>
    public static PathSpeeds All(double speedMmS) => new(speedMmS, speedMmS, speedMmS, speedMmS, speedMmS, speedMmS);
}
