namespace Platewright.Sizing.Money;

/// <summary>One number for each assumption: what is reckoned with, or one draw from what may be. Units as there.</summary>
/// <param name="TimeFactor">Multiplies machine times: 1, or a draw from their doubt.</param>
public sealed record CostNumbers(
    double EnergyPerKwh, double LabourPerH, double TaxShare, double FilamentPerKg, double FailureShare, double LifeYears,
    double ResidualShare, double AssembleH, double TuneHPerYear, double MaintainHPer100H, double WearSharePer100H,
    double PrepareMin, double RemoveMin, double TimeFactor = 1)
{
    public static CostNumbers Of(CostAssumptions a, Func<Guess, double> pick) => new(
        pick(a.EnergyPerKwh), pick(a.LabourPerH), pick(a.TaxShare), pick(a.FilamentPerKg), pick(a.FailureShare), pick(a.LifeYears),
        pick(a.ResidualShare), pick(a.AssembleH), pick(a.TuneHPerYear), pick(a.MaintainHPer100H), pick(a.WearSharePer100H),
        pick(a.PrepareMin), pick(a.RemoveMin));

    /// <summary>What is reckoned with where no doubt is looked at.</summary>
    public static CostNumbers Usual(CostAssumptions a) => Of(a, g => g.Value);

    /// <summary>Builds begun for each that succeeds.</summary>
    public double Attempts => Failures.AttemptsFor(FailureShare);
}
