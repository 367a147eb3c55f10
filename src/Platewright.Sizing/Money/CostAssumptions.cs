namespace Platewright.Sizing.Money;

/// <summary>
/// What is assumed about money and time besides what machine files say. All defaults are ours; each has a range and says where it
/// comes from. Amounts are in <see cref="Currency"/>.
/// </summary>
public sealed record CostAssumptions
{
    private const string Ours = "our assumption, no source";

    /// <summary>ISO 4217.</summary>
    public string Currency { get; init; } = "EUR";

    public Guess EnergyPerKwh { get; init; } = new(0.30, 0.18, 0.45, "our assumption; see the last bill");

    /// <summary>What an hour of somebody's time costs: 0 where it is not paid.</summary>
    public Guess LabourPerH { get; init; } = new(0, 0, 0, "our assumption: nobody is paid for it");

    /// <summary>Added to everything that is bought, 0 … 1.</summary>
    public Guess TaxShare { get; init; } = new(0, 0, 0, "our assumption: prices include it");

    /// <summary>For materials without a price.</summary>
    public Guess FilamentPerKg { get; init; } = new(25, 20, 40, Ours);

    /// <summary>Share of builds that fail and are built again, 0 … 1 (without 1).</summary>
    public Guess FailureShare { get; init; } = Failures.Of(WorkshopKind.Practised);

    /// <summary>For machines whose file does not say.</summary>
    public Guess LifeYears { get; init; } = new(5, 3, 8, Ours);

    public Guess ResidualShare { get; init; } = new(0.15, 0, 0.3, Ours);

    public Guess AssembleH { get; init; } = new(2, 1, 6, Ours);

    public Guess TuneHPerYear { get; init; } = new(6, 2, 20, Ours);

    public Guess MaintainHPer100H { get; init; } = new(0.7, 0.3, 2, Ours);

    /// <summary>Worn parts for every 100 h of building, as a share of the price.</summary>
    public Guess WearSharePer100H { get; init; } = new(0.004, 0.001, 0.01, Ours);

    /// <summary>Somebody's time before each build: file, filament, a clean surface; min.</summary>
    public Guess PrepareMin { get; init; } = new(8, 5, 15, "common practice, no source (5 to 15 min)");

    /// <summary>Somebody's time after each build: taking off, supports; min.</summary>
    public Guess RemoveMin { get; init; } = new(5, 2, 15, "common practice, no source (2 to 10 min, more with supports)");

    /// <summary>From part in hand to the changed model, when something is being developed; min.</summary>
    public Guess LookMin { get; init; } = new(20, 5, 60, Ours);
}
