using Platewright.Geometry;

namespace Platewright.Formats.Programs;

/// <summary>One straight move of a motion program, a chord of an arc, or a wait.</summary>
/// <param name="ToMm">Where it ends, mm, in the coordinates of the machine.</param>
/// <param name="SpeedMmS">
/// Speed asked for, mm/s; infinite for as fast as the machine can. Of filament, where the move has no length.
/// </param>
/// <param name="FilamentMm">Filament pushed forward during it, mm; negative for pulled back.</param>
/// <param name="WaitS">Time to stand still before it, s.</param>
/// <param name="CurveRadiusMm">Radius of the curve it is a chord of, mm; infinite for a straight move.</param>
/// <param name="Line">Line of the file, from 1.</param>
public readonly record struct ProgramMove(
    Vec3 ToMm, double SpeedMmS, double FilamentMm, double WaitS, float CurveRadiusMm, int Line);
