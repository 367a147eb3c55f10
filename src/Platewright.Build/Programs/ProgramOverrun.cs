namespace Platewright.Build.Programs;

/// <summary>Where a program would leave what a machine reaches.</summary>
/// <param name="Direction">As <c>x</c>, <c>-x</c>, <c>z</c>, or <c>outwards</c> on a round or polygonal
/// surface.</param>
/// <param name="ByMm">How far it would run out, mm.</param>
/// <param name="Line">Line of the program where it runs out furthest, from 1.</param>
/// <param name="Extruding">True where material is laid down there; then margins hold too.</param>
public sealed record ProgramOverrun(string Direction, double ByMm, int Line, bool Extruding)
{
    /// <summary>As a sentence for its owner.</summary>
    public string Sentence => Extruding
        ? $"line {Line}: it would lay material {ByMm:0.##} mm outside the usable build volume in {Direction}."
        : $"line {Line}: it would run out of travel in {Direction} by {ByMm:0.##} mm.";
}
