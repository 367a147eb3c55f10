using System.Collections.Immutable;

namespace Platewright.Sizing.Mixing;

/// <summary>Which machines, and how many of each, cover a stated share of the work at the least monthly cost?</summary>
/// <remarks>
/// Hours count per kind as a whole: a job's monthly quantity may be spread over several machines of its kind. Jobs of
/// projects that are not covered cost nothing and use nothing. Everything is counted on a fixed grid, so that sums are
/// exact: money in 1/10,000, hours in 1/10,000 h (a job's rounded up, a machine's down), floor in cm² and power in mW
/// (rounded up, limits down), weights in 1/10⁹ of their sum.
/// </remarks>
/// <param name="Kinds">At least one.</param>
/// <param name="Projects">The whole work; may be empty.</param>
/// <param name="LeastShare">Least share of the projects' weight to cover, 0 … 1.</param>
/// <param name="Limits">What the mix must stay within.</param>
public sealed record MixProblem(
    ImmutableArray<MixKind> Kinds, ImmutableArray<MixProject> Projects, double LeastShare, MixLimits Limits);
