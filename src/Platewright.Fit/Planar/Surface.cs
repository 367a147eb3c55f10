using Platewright.Geometry;

namespace Platewright.Fit.Planar;

/// <summary>A shadow laid on a build surface.</summary>
/// <param name="Scale">The largest scale there, 0 where the brim alone does not fit.</param>
/// <param name="Angle">Turn about the vertical after the stand, radians.</param>
/// <param name="Offset">Translation of the turned, scaled shadow, mm.</param>
internal readonly record struct Laying(double Scale, double Angle, Vec2 Offset);

/// <summary>
/// A build surface after margins. The body's shadow must stay within its walls; what touches the surface must stay a brim
/// further inside. The brim does not scale with the part.
/// </summary>
internal abstract class Surface
{
    /// <summary>
    /// The largest scale at any angle; exact up to rounding. Only scales above <paramref name="above"/> matter: where
    /// there is none, some lower scale is given.
    /// </summary>
    public abstract Laying LayTurned(Shadow shadow, double brimMm, double above);

    /// <summary>The largest scale at a given angle.</summary>
    public abstract Laying LayAt(Shadow shadow, double angle, double brimMm);

    /// <summary>
    /// Twice the distance by which every wall could move in (negative: must move out) for the shadow at this size to
    /// lie within, wherever it is put, mm.
    /// </summary>
    public abstract double ClearanceMm(Shadow shadow, double angle, double size, double brimMm);

    /// <summary>Walls as (normal, distance from the origin) that hold the surface; a round one has none.</summary>
    public abstract IReadOnlyList<(Vec2 Normal, double Offset)> Walls { get; }
}
