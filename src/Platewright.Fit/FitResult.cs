using System.Collections.Immutable;
using Platewright.Geometry;

namespace Platewright.Fit;

/// <summary>How a part can be made on a machine, in the words of the report.</summary>
public enum Verdict
{
    /// <summary>Fits as the file has it, after translation only.</summary>
    AsDrawn,

    /// <summary>Fits after rotation about the vertical, or resting on another face of its hull.</summary>
    Turned,

    /// <summary>Fits only at an angle that needs support underneath.</summary>
    Tilted,

    /// <summary>Fits at a scale below 100 % but not below what the user allows.</summary>
    Scaled,

    /// <summary>Fits when cut by parallel planes.</summary>
    InPieces,

    /// <summary>None of these.</summary>
    No,
}

/// <summary>What a user lets happen to a part.</summary>
/// <param name="LeastScale">Smallest scale accepted, 0 &lt; LeastScale ≤ 1; 1 forbids scaling.</param>
public sealed record Allowance(bool Turn = true, bool Tilt = true, bool Cut = true, double LeastScale = 0.95);

/// <summary>What is fitted: the hull decides.</summary>
/// <param name="Shrinkage">σ of the material: the built part is (1 + σ) times the drawn one.</param>
/// <param name="BrimMm">Brim around the contact with the build surface, mm.</param>
public sealed record PartShape(ConvexHull Hull, double Shrinkage = 0, double BrimMm = 0);

/// <summary>A place in the build volume: first scale, then rotate, then translate (mm). z = 0 is the build surface.</summary>
/// <param name="Scale">Factor on the drawn part, shrinkage compensation included.</param>
public sealed record Pose(double Scale, Rotation Rotation, Vec3 Translation);

/// <summary>The best way of fitting under one freedom.</summary>
/// <param name="LargestScale">Largest uniform scale of the drawn part that fits; 0 where none does.</param>
/// <param name="Pose">The pose that reaches it.</param>
public sealed record WayOfFitting(double LargestScale, Pose Pose)
{
    public bool Fits => LargestScale >= 1 - Tolerances.UnitScale;
}

/// <summary>One part on one machine.</summary>
public sealed record FitResult
{
    public required Verdict Verdict { get; init; }

    public required bool Tight { get; init; }

    public required WayOfFitting AsDrawn { get; init; }

    public required WayOfFitting Upright { get; init; }

    public required WayOfFitting Turned { get; init; }

    public required WayOfFitting Tilted { get; init; }

    /// <summary>Proved: no scale above it fits in any pose.</summary>
    public required double UpperBound { get; init; }

    /// <summary>False where the bracket is open around the answer: keep-outs or a brim the bound does not see.</summary>
    public required bool Proved { get; init; }

    /// <summary>Left (negative: missing) along the tightest direction in the verdict's pose at 100 %, mm.</summary>
    public required double ClearanceMm { get; init; }

    /// <summary>Pieces needed, 1 unless the verdict is <see cref="Verdict.InPieces"/>.</summary>
    public int Pieces { get; init; } = 1;

    /// <summary>How it is cut; null unless the verdict is <see cref="Verdict.InPieces"/>.</summary>
    public PartCut? Cut { get; init; }

    /// <summary>The pose of the verdict: at 100 % where it fits, else at the largest scale.</summary>
    public required Pose Pose { get; init; }

    /// <summary>One sentence: why.</summary>
    public required string Reason { get; init; }
}

/// <summary>Parallel slices of equal thickness, each with its own place in the build volume.</summary>
/// <param name="Direction">Unit normal of the cutting planes in the drawn part.</param>
/// <param name="BoundsMm">
/// Where along <paramref name="Direction"/> the pieces begin and end, mm: the first is where the part begins, the last where it
/// ends, so one more than pieces.
/// </param>
/// <param name="Poses">Of each piece: the drawn part, of which only this piece is there, is moved by it.</param>
public sealed record PartCut(Vec3 Direction, ImmutableArray<double> BoundsMm, ImmutableArray<Pose> Poses);

/// <summary>A square bed and a height that a part fits in, mm.</summary>
public readonly record struct BedAndHeight(double BedMm, double HeightMm);

/// <summary>The smallest volumes a part fits in at 100 %.</summary>
/// <param name="CubeTurnedMm">Edge of the smallest cube, resting on a face of the hull, mm.</param>
/// <param name="CubeTiltedMm">Edge of the smallest cube in any pose, mm (reached).</param>
/// <param name="CubeTiltedAtLeastMm">Proved: no smaller cube holds it, mm.</param>
/// <param name="TurnedCurve">Pareto-best beds and heights resting on a face, widest bed last.</param>
/// <param name="TiltedCurve">The same in any pose.</param>
public sealed record SizeNeed(
    double CubeTurnedMm, double CubeTiltedMm, double CubeTiltedAtLeastMm,
    ImmutableArray<BedAndHeight> TurnedCurve, ImmutableArray<BedAndHeight> TiltedCurve);
