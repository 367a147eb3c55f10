using Platewright.Sizing.Cases;

namespace Platewright.Sizing.Money;

/// <summary>
/// What work adds to the cost of a machine, for one of each thing it takes: <see cref="CostAccount.Working"/> is linear in its load, so
/// that thousands of jobs need no account each.
/// </summary>
public readonly record struct WorkingRates(double Build, double Hour, double Kwh, double PricedFilament, double UnpricedKg)
{
    /// <summary>Large enough that the account's rounding does not show in one.</summary>
    private const double Many = 1e6;

    private const int Decimals = 4;

    public static WorkingRates Of(SizedMachine machine, CostNumbers numbers)
    {
        return new WorkingRates(
            Rate(Load.None with { Builds = Many }), Rate(Load.None with { Hours = Many }), Rate(Load.None with { EnergyKwh = Many }),
            Rate(Load.None with { PricedFilament = Many }), Rate(Load.None with { UnpricedKg = Many }));

        double Rate(Load load) => (double)CostAccount.Of(machine, 0, load, numbers).Working / Many;
    }

    /// <summary>Of a load, to a hundredth of a cent.</summary>
    public decimal Cost(Load load) => Math.Round(
        (decimal)(load.Builds * Build + load.Hours * Hour + load.EnergyKwh * Kwh + load.PricedFilament * PricedFilament
            + load.UnpricedKg * UnpricedKg),
        Decimals);
}
