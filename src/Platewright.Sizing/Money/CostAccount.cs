using Platewright.Sizing.Cases;

namespace Platewright.Sizing.Money;

/// <summary>
/// What a machine with its work costs in a month, line by line, in the currency of the case, each to a hundredth of a cent so that
/// the lines add up to the total exactly.
/// </summary>
/// <param name="Purchase">Price less what is left of it, over its life.</param>
/// <param name="PrintedParts">Its own printed parts, where it is built with some, over its life.</param>
/// <param name="Assembling">Somebody's time to get it going, over its life.</param>
/// <param name="Tuning">Somebody's time, whether it works or not.</param>
/// <param name="OwningTax">On what is bought of these.</param>
/// <param name="Maintaining">Somebody's time by hours of building.</param>
/// <param name="Wear">Worn parts by hours of building.</param>
/// <param name="Handling">Somebody's time before and after each build.</param>
/// <param name="FailedBuilds">Energy, filament, wear and time of builds that are made again.</param>
/// <param name="WorkTax">On what is bought for the work.</param>
public sealed record CostAccount(
    decimal Purchase, decimal PrintedParts, decimal Assembling, decimal Tuning, decimal OwningTax, decimal Maintaining, decimal Wear,
    decimal Energy, decimal Filament, decimal Handling, decimal FailedBuilds, decimal WorkTax)
{
    private const double MonthsPerYear = 12;

    private const double MinutesPerHour = 60;

    private const double Hundred = 100;

    private const int Decimals = 4;

    /// <summary>What it costs without any work.</summary>
    public decimal Owning => Purchase + PrintedParts + Assembling + Tuning + OwningTax;

    /// <summary>What the work adds.</summary>
    public decimal Working => Maintaining + Wear + Energy + Filament + Handling + FailedBuilds + WorkTax;

    public decimal Total => Owning + Working;

    /// <summary>What is paid month by month once it is bought and runs.</summary>
    public decimal Running => Tuning + Working;

    /// <param name="machine">With a price; without one nothing is reckoned for buying and wearing.</param>
    /// <param name="count">How many of it are owned, 0 or more.</param>
    /// <param name="load">Work of all of them together in a month.</param>
    /// <param name="numbers">What is assumed.</param>
    /// <param name="printedParts">What the printed parts of one cost to make; 0 for none.</param>
    public static CostAccount Of(SizedMachine machine, int count, Load load, CostNumbers numbers, decimal printedParts = 0)
    {
        double price = (double)(machine.Price ?? 0);
        Owned own = Owned.Of(machine, price, numbers);
        double months = MonthsPerYear * own.LifeYears;
        decimal purchase = Money(count * price * (1 - own.ResidualShare) / months);
        decimal printed = Money(count * (double)printedParts / months);
        decimal assembling = Money(count * own.AssembleH * numbers.LabourPerH / months);
        decimal tuning = Money(count * own.TuneHPerYear * numbers.LabourPerH / MonthsPerYear);
        double hours = load.Hours * numbers.TimeFactor;
        decimal maintaining = Money(hours / Hundred * own.MaintainHPer100H * numbers.LabourPerH);
        decimal wear = Money(hours / Hundred * own.WearPer100H);
        decimal energy = Money(load.EnergyKwh * numbers.TimeFactor * numbers.EnergyPerKwh);
        decimal filament = Money(load.PricedFilament + load.UnpricedKg * numbers.FilamentPerKg);
        decimal handling = Money(load.Builds * (numbers.PrepareMin + numbers.RemoveMin) / MinutesPerHour * numbers.LabourPerH);
        double again = numbers.Attempts - 1;
        decimal failedBought = Money(again * (double)(wear + energy + filament));
        decimal failedTime = Money(again * (double)(maintaining + handling));
        return new CostAccount(
            purchase, printed, assembling, tuning, Money((double)purchase * numbers.TaxShare), maintaining, wear, energy, filament,
            handling, failedBought + failedTime, Money((double)(wear + energy + filament + failedBought) * numbers.TaxShare));
    }

    /// <summary>What is paid before the first part: price with tax, printed parts, somebody's time.</summary>
    public static decimal Upfront(SizedMachine machine, int count, CostNumbers numbers, decimal printedParts = 0)
    {
        double price = (double)(machine.Price ?? 0);
        Owned own = Owned.Of(machine, price, numbers);
        return Money(count * (price * (1 + numbers.TaxShare) + (double)printedParts + own.AssembleH * numbers.LabourPerH));
    }

    public static CostAccount operator +(CostAccount a, CostAccount b) => new(
        a.Purchase + b.Purchase, a.PrintedParts + b.PrintedParts, a.Assembling + b.Assembling, a.Tuning + b.Tuning,
        a.OwningTax + b.OwningTax, a.Maintaining + b.Maintaining, a.Wear + b.Wear, a.Energy + b.Energy, a.Filament + b.Filament,
        a.Handling + b.Handling, a.FailedBuilds + b.FailedBuilds, a.WorkTax + b.WorkTax);

    private static decimal Money(double amount) => Math.Round((decimal)amount, Decimals);

    /// <summary>What a machine's file says of owning it, the assumption where it is silent.</summary>
    private readonly record struct Owned(
        double LifeYears, double ResidualShare, double AssembleH, double TuneHPerYear, double MaintainHPer100H, double WearPer100H)
    {
        public static Owned Of(SizedMachine machine, double price, CostNumbers n) => new(
            machine.Upkeep.LifeYears ?? n.LifeYears,
            machine.Upkeep.ResidualShare ?? n.ResidualShare,
            machine.Upkeep.AssembleH ?? n.AssembleH,
            machine.Upkeep.TuneHPerYear ?? n.TuneHPerYear,
            machine.Upkeep.MaintainHPer100H ?? n.MaintainHPer100H,
            machine.Upkeep.WearPer100H ?? price * n.WearSharePer100H);
    }
}
