using Platewright.Sizing.Money;
using Platewright.Study.Documents;

namespace Platewright.Study.Deciding;

/// <summary>What money and time are reckoned with, each with its doubt and source.</summary>
internal static class Assumptions
{
    public static IReadOnlyList<AssumptionDocument> Of(CostAssumptions a)
    {
        string money = a.Currency;
        return
        [
            Of("energy_per_kwh", "price of electricity", $"{money}/kWh", a.EnergyPerKwh),
            Of("labour_per_h", "an hour of somebody's time", $"{money}/h", a.LabourPerH),
            Of("tax_share", "tax on what is bought", "", a.TaxShare),
            Of("filament_per_kg", "filament without a price", $"{money}/kg", a.FilamentPerKg),
            Of("failure_share", "builds that fail", "", a.FailureShare),
            Of("life_years", "years in use, where the machine's file does not say", "years", a.LifeYears),
            Of("residual_share", "left of the price then", "", a.ResidualShare),
            Of("assemble_h", "to assemble a machine", "h", a.AssembleH),
            Of("tune_h_per_year", "to tune a machine in a year", "h", a.TuneHPerYear),
            Of("maintain_h_per_100h", "to maintain it, for every hundred hours of building", "h", a.MaintainHPer100H),
            Of("wear_share_per_100h", "worn parts for every hundred hours, of the price", "", a.WearSharePer100H),
            Of("prepare_min", "somebody's time before a build", "min", a.PrepareMin),
            Of("remove_min", "somebody's time after a build", "min", a.RemoveMin),
            Of("look_min", "from a part in hand to the next change", "min", a.LookMin),
        ];
    }

    private static AssumptionDocument Of(string key, string what, string unit, Guess g) =>
        new($"cost.{key}", what, unit, g.Value, g.Low, g.High, g.Source);
}
