using Platewright.Machines;
using Platewright.Sizing;
using Platewright.Sizing.Answers;
using Platewright.Sizing.Cases;
using Platewright.Sizing.Money;
using Platewright.Study.Documents;
using Platewright.Study.Estimating;
using Platewright.Study.Pipeline;

namespace Platewright.Study.Deciding;

/// <summary>What making one copy adds to the cost of a machine that is there: energy, filament, wear, somebody's time, failures, tax.</summary>
internal static class PartCost
{
    /// <returns>In the currency of the study; null where the machine's price is not known: its wear follows from it.</returns>
    public static decimal? Of(StudyPart part, PartEstimateDocument estimate, Machine machine, SizingPlan plan)
    {
        SizedMachine sized = SizingCases.MachineOf(machine, plan);
        if (sized.Price is null) return null;
        Making making = new(
            part.Id, FitClass.Fits, estimate.TimeS.Total, estimate.TimeS.WarmUp, estimate.TimeS.Release, 0, 0, estimate.MassG,
            estimate.EnergyKwh?.Total, estimate.PeakPowerW, SizingCases.InCurrency(PartCase.MaterialOf(part).Material.PricePerKg, plan),
            Reckoned: false);
        return CostAccount.Of(sized, 0, Loads.Of(making)!.Value, CostNumbers.Usual(plan.Costs)).Working;
    }
}
