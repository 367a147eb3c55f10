using System.Text.Json.Serialization;

namespace Platewright.Study.Documents;

/// <summary>What <c>fit --json</c> says. Keys are the snake_case of these names.</summary>
public sealed record FitsDocument(IReadOnlyList<FitRowDocument> Fits, IReadOnlyList<UnusableDocument> Unusable)
{
    [JsonPropertyOrder(-1)]
    public int Format { get; init; } = 1;
}

/// <summary>One part on one machine.</summary>
/// <param name="Reasons">Sentences: first the fit, then whatever else keeps the part from being made.</param>
/// <param name="ClearanceMm">Left (negative: missing) along the tightest direction in the verdict's pose.</param>
/// <param name="Seconds">How long it took; for information only.</param>
public sealed record FitRowDocument(
    string File, string? Part, string Machine, string Verdict, bool Tight, bool CanMake, IReadOnlyList<string> Reasons,
    TranslatedDocument AsDrawn, RotatedDocument Upright, RotatedDocument Turned, TiltedDocument Tilted,
    double ClearanceMm, double Seconds);

/// <param name="LargestScale">Largest uniform scale that fits after translation only.</param>
public sealed record TranslatedDocument(bool Fits, double LargestScale);

/// <param name="Rotation">Unit quaternion w, x, y, z that reaches the scale.</param>
public sealed record RotatedDocument(bool Fits, double LargestScale, IReadOnlyList<double> Rotation);

/// <param name="UpperBound">Proved: no scale above it fits in any pose.</param>
public sealed record TiltedDocument(bool Fits, double LargestScale, double UpperBound, IReadOnlyList<double> Rotation);
