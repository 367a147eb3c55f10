using System.Collections.Immutable;

namespace Platewright.Sizing;

/// <summary>From this edge on, until the next step, these shares of the projects.</summary>
/// <param name="EdgeMm">Edge of the imagined machine's cube, mm.</param>
/// <param name="Fits">Projects without a compromise.</param>
/// <param name="WithCompromise">
/// Projects with or without one: tilted or scaled. Cutting depends on no edge, so it is not in it.
/// </param>
public sealed record CoverageStep(double EdgeMm, Share Fits, Share WithCompromise);

/// <summary>Share of projects against the edge of a machine.</summary>
public static class CoverageCurve
{
    /// <summary>The steps, smallest edge first; none where no project is ever held.</summary>
    /// <param name="projects">The sample; those that are not complete count in its size only.</param>
    /// <param name="machine">What is asked.</param>
    /// <param name="confidence">Of the intervals, greater than 0 and less than 1.</param>
    /// <param name="population">Projects in all the work they are a sample of; null where not known.</param>
    public static ImmutableArray<CoverageStep> Of(
        IReadOnlyCollection<SizedProject> projects, ImaginedMachine machine, double confidence, int? population = null)
    {
        Edges[] edges = [.. projects.Select(machine.EdgesFor)];
        double[] steps =
        [
            .. edges.SelectMany(e => new[] { e.FitsMm, e.WithCompromiseMm }).Where(double.IsFinite).Distinct().Order(),
        ];
        return
        [
            .. steps.Select(edge => new CoverageStep(
                edge,
                Share.Wilson(edges.Count(e => e.FitsMm <= edge), edges.Length, confidence, population),
                Share.Wilson(edges.Count(e => e.WithCompromiseMm <= edge), edges.Length, confidence, population))),
        ];
    }
}
