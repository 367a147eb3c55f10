namespace Platewright.Sizing.Mixing;

/// <summary>How hard to search; counted, never timed, so that the same input gives the same answer.</summary>
/// <param name="DeterministicSeconds">
/// Of the exact solver per question, in its own deterministic unit, which is roughly a second; greater than 0.
/// </param>
/// <param name="ExactAssignments">
/// Problems with at most this many pairs of a job and an able kind, after lossless reduction, go to the exact solver
/// whole, and are bracketed too where it does not close; larger ones are only bracketed. 0 or more. The default is
/// where the exact solver stopped closing typical problems within its budget.
/// </param>
/// <param name="Rounds">Of the bracket, candidate mixes tried at most; 1 or more.</param>
/// <param name="RelativeGap">The bracket is content with this, 0 or more.</param>
/// <param name="Seed">Of the exact solver.</param>
public sealed record MixEffort(
    double DeterministicSeconds = 4, int ExactAssignments = 3000, int Rounds = 16, double RelativeGap = 0.002,
    int Seed = 1);
