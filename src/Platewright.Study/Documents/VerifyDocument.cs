using System.Text.Json.Serialization;

namespace Platewright.Study.Documents;

/// <summary>What <c>verify --json</c> says.</summary>
public sealed record VerifyDocument(IReadOnlyList<VerifiedProofDocument> Proofs)
{
    [JsonPropertyOrder(-1)]
    public int Format { get; init; } = 1;
}

/// <summary>What the checker says of one proof.</summary>
/// <param name="Error">Null where the proof holds, else one sentence.</param>
/// <param name="LowerScale">A scale at which the part fits; proved where accepted.</param>
/// <param name="UpperScale">No scale above it fits in any pose; proved where accepted.</param>
/// <param name="Cells">Cells of rotation space that were checked.</param>
public sealed record VerifiedProofDocument(
    string File, string? Part, string Machine, bool Accepted, string? Error, double LowerScale, double UpperScale, int Cells);
