using Platewright.Geometry;

namespace Platewright.Build.Motion;

/// <summary>One straight move from where the last one ended.</summary>
/// <param name="To">Where it ends, mm.</param>
/// <param name="SpeedMmS">Greatest speed wanted on it, mm/s; the machine's own limits hold besides.</param>
/// <param name="BeadAreaMm2">Area of the bead it lays down, mm²; 0 for none. Its material is length × area.</param>
/// <param name="StandstillS">Time the machine stands still before it, s; above 0 the move starts from rest.</param>
public readonly record struct Move(Vec3 To, double SpeedMmS, double BeadAreaMm2, double StandstillS, PathKind Kind);
