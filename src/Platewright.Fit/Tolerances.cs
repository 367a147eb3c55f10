namespace Platewright.Fit;

/// <summary>Every small number of this room, with its meaning.</summary>
internal static class Tolerances
{
    /// <summary>A scale this close below 1 counts as 1: rounding of the file's coordinates, relative.</summary>
    public const double UnitScale = 1e-9;

    /// <summary>What a bound computed in double precision may be too large by, relative (about 500 roundings).</summary>
    public const double Rounding = 1e-13;

    /// <summary>Relative progress below which polishing a pose stops.</summary>
    public const double Polish = 1e-15;

    /// <summary>Vertices this near the lowest one touch the build surface, mm: half a thin first layer.</summary>
    public const double ContactBandMm = 0.1;

    /// <summary>What a part placed among keep-outs may overlap a wall or a keep-out by, mm: rounding only.</summary>
    public const double PlacementMm = 1e-7;
}
