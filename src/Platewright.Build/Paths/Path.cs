using Platewright.Build.Motion;
using Platewright.Geometry;

namespace Platewright.Build.Paths;

/// <summary>One path laid down without a pause, in the axes of the layer.</summary>
/// <param name="Points">Its corners, mm.</param>
/// <param name="Closed">True where it returns to its first point.</param>
/// <param name="BeadAreaMm2">Cross-section of its bead, mm².</param>
/// <param name="Dashed">
/// True where only every other stretch, the first among them, lays down material: lines of a filling, joined end to end.
/// </param>
internal sealed record Path(PathKind Kind, Vec2[] Points, bool Closed, double BeadAreaMm2, bool Dashed = false);
