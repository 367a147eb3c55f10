namespace Platewright.Sizing.Money;

/// <summary>What a month's work, or one build, takes on one machine, if nothing fails.</summary>
/// <param name="Builds">Builds that succeed.</param>
/// <param name="Hours">Machine time, h.</param>
/// <param name="EnergyKwh">Electricity, kWh; builds without a known energy add nothing and make <paramref name="EnergyKnown"/> false.</param>
/// <param name="PricedFilament">Filament whose price is known, in money.</param>
/// <param name="UnpricedKg">Filament without a known price, kg.</param>
public readonly record struct Load(
    double Builds, double Hours, double EnergyKwh, bool EnergyKnown, double PricedFilament, double UnpricedKg)
{
    public static readonly Load None = new(0, 0, 0, EnergyKnown: true, 0, 0);

    public static Load operator +(Load a, Load b) => new(
        a.Builds + b.Builds, a.Hours + b.Hours, a.EnergyKwh + b.EnergyKwh, a.EnergyKnown && b.EnergyKnown,
        a.PricedFilament + b.PricedFilament, a.UnpricedKg + b.UnpricedKg);

    public static Load operator *(double times, Load a) => a with
    {
        Builds = times * a.Builds,
        Hours = times * a.Hours,
        EnergyKwh = times * a.EnergyKwh,
        PricedFilament = times * a.PricedFilament,
        UnpricedKg = times * a.UnpricedKg,
    };
}
