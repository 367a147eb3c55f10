using Platewright.Sizing.Money;
using Platewright.Study.Documents;

namespace Platewright.Tests.Report;

/// <summary>Loads of the fixture's machines as its document says them.</summary>
internal static class FixtureLoads
{
    public static LoadDocument Of(Load load) =>
        new(load.Builds, load.Hours, load.EnergyKwh, load.PricedFilament, load.UnpricedKg);

    /// <summary>What hours of a mix take besides.</summary>
    public static LoadDocument OfHours(double hours) => new(hours / 2, hours, hours / 5, hours * 0.8, hours * 0.02);
}
