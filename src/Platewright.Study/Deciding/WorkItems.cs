using Platewright.Sizing;
using Platewright.Sizing.Cases;
using Platewright.Study.Documents;
using Platewright.Study.Judgement;

namespace Platewright.Study.Deciding;

/// <summary>A part, or alternatives of which one is enough, as sizing looks at it.</summary>
internal static class WorkItems
{
    public static WorkItem Of(IReadOnlyList<StudiedPart> alternatives, JudgedStudy study, SizeReckoning reckoning)
    {
        PartEstimateDocument[] all =
        [
            .. alternatives.SelectMany(p => p.Estimates.Where((e, m) => e is not null && p.Fits[m].CanMake)).OfType<PartEstimateDocument>(),
        ];
        bool reckoned = all.Length == 0;
        double? seconds = reckoned ? alternatives.Min(reckoning.SecondsOf) : all.Min(e => e.TimeS.Total);
        double? grams = reckoned ? alternatives.Min(reckoning.GramsOf) : all.Min(e => e.MassG);
        StudiedPart first = alternatives[0];
        return new WorkItem(
            first.Id,
            alternatives.Count > 1 ? first.AnyOf! : first.Part.Name,
            alternatives.Min(p => p.Part.Planned.Quantity),
            [.. study.Machines.Select((m, i) => On(alternatives, i, study, m.Motion is null ? null : seconds, m.Motion is null ? null : grams))],
            seconds, grams, reckoned && seconds is not null);
    }

    /// <summary>Of the alternatives that the machine makes the one that takes the least time; null where it makes none.</summary>
    private static Making? On(IReadOnlyList<StudiedPart> alternatives, int machine, JudgedStudy study, double? seconds, double? grams) =>
        alternatives.Where(p => p.Fits[machine].CanMake)
            .Select(p => Of(p, machine, study, seconds, grams))
            .OrderBy(m => m.Fit).ThenBy(m => m.TimeS ?? double.PositiveInfinity)
            .FirstOrDefault();

    private static Making Of(StudiedPart part, int machine, JudgedStudy study, double? seconds, double? grams)
    {
        FitClass fit = part.Fits[machine].Fit.Verdict.Class();
        decimal? perKg = SizingCases.InCurrency(Estimating.PartCase.MaterialOf(part.Part).Material.PricePerKg, study.Plan.Sizing);
        return part.Estimates[machine] is { } e
            ? new Making(
                part.Id, fit, e.TimeS.Total, e.TimeS.WarmUp, e.TimeS.Release, e.TimeError.Low, e.TimeError.High, e.MassG,
                e.EnergyKwh?.Total, e.PeakPowerW, perKg, Reckoned: false)
            : new Making(part.Id, fit, seconds, 0, 0, Unknown.Low, Unknown.High, grams, null, null, perKg, Reckoned: true);
    }

    // Of times reckoned from other machines or from a size: judgement, no source.
    private static readonly (double Low, double High) Unknown = (-0.5, 1);
}
