using System.Collections.Immutable;
using Platewright.Fit;

namespace Platewright.Sizing;

/// <summary>A project on one machine, as far as counting needs it.</summary>
/// <param name="DecidedBy">Id of the part that decides; null where none does.</param>
public sealed record ProjectOutcome(Verdict Verdict, bool CanMake, string? DecidedBy);

/// <summary>How much of the work one machine takes.</summary>
/// <param name="Fits">Without a compromise.</param>
/// <param name="Compromise">Only tilted, scaled or in pieces.</param>
/// <param name="No">Not at all.</param>
/// <param name="CanMake">Held, with or without a compromise, and heat and bead suffice.</param>
/// <param name="DecidingParts">
/// Ids of the parts that keep projects out, then of those that force a compromise; each once.
/// </param>
public sealed record Coverage(
    int Projects, Share Fits, Share Compromise, Share No, Share CanMake, ImmutableArray<string> DecidingParts)
{
    /// <param name="outcomes">One for each project, in the order of the study.</param>
    /// <param name="confidence">Of the intervals, greater than 0 and less than 1.</param>
    /// <param name="population">Projects in all the work they are a sample of; null where not known.</param>
    public static Coverage Of(IReadOnlyCollection<ProjectOutcome> outcomes, double confidence, int? population = null)
    {
        Share Counted(Func<ProjectOutcome, bool> counts) =>
            Share.Wilson(outcomes.Count(counts), outcomes.Count, confidence, population);
        return new Coverage(
            outcomes.Count,
            Counted(o => o.Verdict.Class() == FitClass.Fits),
            Counted(o => o.Verdict.Class() == FitClass.Compromise),
            Counted(o => o.Verdict.Class() == FitClass.No),
            Counted(o => o.CanMake),
            [
                .. outcomes
                    .Where(o => !o.CanMake || o.Verdict.Class() != FitClass.Fits)
                    .OrderBy(o => o.CanMake)
                    .Select(o => o.DecidedBy).OfType<string>().Distinct(StringComparer.Ordinal),
            ]);
    }
}
