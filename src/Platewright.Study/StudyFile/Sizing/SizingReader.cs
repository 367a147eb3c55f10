using System.Collections.Immutable;
using Platewright.Formats.Toml;
using Platewright.Machines;
using Platewright.Sizing.Cases;
using Platewright.Sizing.Money;

namespace Platewright.Study;

/// <summary>Reads everything a study file says beyond fit and time.</summary>
internal static class SizingReader
{
    /// <param name="root">The study file.</param>
    /// <param name="tables">Its <c>[[project]]</c> tables.</param>
    /// <param name="projects">What they and the folders gave.</param>
    /// <param name="machines">Those of the study.</param>
    public static SizingPlan Read(
        TomlTable root, ImmutableArray<TomlTable> tables, ImmutableArray<PlannedProject> projects, ImmutableArray<Machine> machines)
    {
        (WorkStatement work, double? perMonth) = WorkReader.Read(root, tables, projects);
        PlacePlan place = PlaceReader.Read(root);
        CostAssumptions costs = MoneyReader.Read(root);
        var exchange = MoneyReader.Exchange(root);
        AimReader aims = new(machines);
        return new SizingPlan(
            work, perMonth, place, aims.Read(root, InCurrency), costs, exchange, AimReader.Orders(root, projects), aims.SameMoney(root));

        decimal? InCurrency(TomlTable table, Price price)
        {
            if (price.Currency == costs.Currency) return price.Amount;
            if (exchange.TryGetValue(price.Currency, out decimal rate)) return price.Amount * rate;
            table.Refuse("currency", $"the study reckons in {costs.Currency}; add [[cost.exchange]] with what one {price.Currency} is worth.");
            return null;
        }
    }
}
