using Platewright.Geometry;

namespace Platewright.Build.Poses;

/// <summary>One way a part may stand while it is built.</summary>
/// <param name="Rotation">Turns the drawn part into it.</param>
/// <param name="AsDrawn">True for the pose of the file.</param>
/// <param name="TipDegrees">How far it may be tipped before it falls, degrees; below 0 it falls by itself.</param>
/// <param name="Layers">Number of layers.</param>
/// <param name="ContactMm2">Area of the first layer, mm².</param>
/// <param name="OverhangMm2">What of all layers lies beyond the layer below, mm².</param>
/// <param name="SupportMm3">Volume under its overhangs, mm³; a support fills a share of it.</param>
public sealed record StandingPose(
    Rotation Rotation, bool AsDrawn, double TipDegrees, int Layers, double ContactMm2, double OverhangMm2, double SupportMm3)
{
    /// <summary>Rough measure of how long it takes, mm³: what is laid down, with a bead's worth for each layer's own time.</summary>
    public required double EffortMm3 { get; init; }
}
