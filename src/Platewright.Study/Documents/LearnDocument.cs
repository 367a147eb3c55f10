using System.Text.Json.Serialization;

namespace Platewright.Study.Documents;

/// <summary>What <c>learn --json</c> says.</summary>
public sealed record LearnDocument(IReadOnlyList<LearnedDocument> Machines, IReadOnlyList<LearnedJobDocument> Jobs, IReadOnlyList<UnusableDocument> Unusable)
{
    [JsonPropertyOrder(-1)]
    public int Format { get; init; } = 1;
}

/// <param name="Jobs">How many jobs of the log ran on it.</param>
/// <param name="Time">Null with fewer than three jobs.</param>
/// <param name="Energy">Null with fewer than three metered jobs.</param>
public sealed record LearnedDocument(string Machine, int Jobs, CorrectionDocument? Time, CorrectionDocument? Energy);

/// <param name="Factor">Measured over estimated.</param>
/// <param name="Low">95 % interval of the next job against the corrected estimate, as a share: negative.</param>
/// <param name="High">The same above it.</param>
public sealed record CorrectionDocument(double Factor, double Low, double High, int Jobs);

/// <summary>One job of the log against its estimate.</summary>
public sealed record LearnedJobDocument(
    int Line, string File, string Machine, double MeasuredS, double EstimatedS, double? MeasuredKwh, double? EstimatedKwh);
