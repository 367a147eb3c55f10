using Platewright.Machines;

namespace Platewright.Sizing;

/// <summary>A machine of any size that is asked about: does it hold the work, or can it make it?</summary>
/// <param name="CanMake">False to ask only for fit; then the rest is not looked at.</param>
/// <param name="Heat">What it heats to; null where heat is not judged.</param>
/// <param name="BeadWidthMm">A wall thinner than one bead cannot be made.</param>
public sealed record ImaginedMachine(bool CanMake, HeatLimits? Heat, double BeadWidthMm)
{
    /// <summary>Asks only whether it holds the work.</summary>
    public static readonly ImaginedMachine OfAnyKind = new(false, null, 0);

    /// <summary>Edges of the smallest cubes with which it makes a part, mm; infinite where no size is enough.</summary>
    public Edges EdgesFor(PartNeed need)
    {
        if (!CanMake) return new Edges(need.CubeTurnedMm, need.CubeAcceptedMm);
        if (HeatCheck.Of(Heat, need.Heat).Answer == HeatAnswer.TooCool) return Edges.Never;
        // Scaling thins the walls, so a thin wall may forbid a scale that the user would accept; above 1 it forbids
        // all.
        double leastForWall = need.ThinnestWallMm is { } wall ? BeadWidthMm / wall : 0;
        if (leastForWall > 1) return Edges.Never;
        double scale = Math.Max(need.LeastScale, leastForWall);
        double scaled = need.CubeScaledMm is null ? double.PositiveInfinity : need.CubeAtScaleMm(scale);
        return new Edges(need.CubeTurnedMm, Math.Min(need.CubeUnscaledMm, scaled));
    }

    /// <summary>The same for a project: the largest of its parts, the smallest of alternatives.</summary>
    public Edges EdgesFor(SizedProject project)
    {
        if (!project.Complete || project.Parts.IsEmpty) return Edges.Never;
        Edges most = new(0, 0);
        foreach (var group in project.Groups)
        {
            Edges least = Edges.Never;
            foreach (SizedPart part in group) least = Edges.Smaller(least, EdgesFor(part.Need));
            most = Edges.Larger(most, least);
        }
        return most;
    }
}

/// <summary>
/// Edges of two cubes, mm: the smallest without a compromise, and the smallest with those that are accepted.
/// </summary>
public readonly record struct Edges(double FitsMm, double WithCompromiseMm)
{
    public static readonly Edges Never = new(double.PositiveInfinity, double.PositiveInfinity);

    public static Edges Smaller(Edges a, Edges b) =>
        new(Math.Min(a.FitsMm, b.FitsMm), Math.Min(a.WithCompromiseMm, b.WithCompromiseMm));

    public static Edges Larger(Edges a, Edges b) =>
        new(Math.Max(a.FitsMm, b.FitsMm), Math.Max(a.WithCompromiseMm, b.WithCompromiseMm));
}
