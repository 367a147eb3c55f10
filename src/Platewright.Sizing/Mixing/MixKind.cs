namespace Platewright.Sizing.Mixing;

/// <summary>A kind of machine that may be in the mix, per unit.</summary>
/// <param name="Id">Its name, unique in the problem.</param>
/// <param name="CostPerMonth">What having one costs, money per month, 0 or more.</param>
/// <param name="HoursPerMonth">Hours one can work, h per month, 0 or more.</param>
public sealed record MixKind(string Id, decimal CostPerMonth, double HoursPerMonth)
{
    /// <summary>What buying one takes from the budget, money, 0 or more.</summary>
    public decimal Price { get; init; }

    /// <summary>Floor in use, m², 0 or more.</summary>
    public double FloorM2 { get; init; }

    /// <summary>Greatest power, W, 0 or more: peaks add up, as machines that start together do.</summary>
    public double PeakW { get; init; }

    /// <summary>Least count: those already there, 0 … <see cref="Most"/>.</summary>
    public int Least { get; init; }

    /// <summary>Greatest count, 0 … 10,000.</summary>
    public int Most { get; init; } = 100;
}
