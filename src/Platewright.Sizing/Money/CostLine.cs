using Platewright.Sizing.Cases;

namespace Platewright.Sizing.Money;

/// <summary>
/// Monthly cost of a kind of machine against the amount of work: as many are owned as the work keeps busy, so that it jumps where one
/// more is needed.
/// </summary>
/// <param name="OwningOne">What one costs without work.</param>
/// <param name="Working">What the work of an amount of 1 adds.</param>
/// <param name="Hours">Machine hours of an amount of 1, failed builds included.</param>
/// <param name="HoursOfOne">What one can give in a month, h, greater than 0.</param>
public readonly record struct CostLine(double OwningOne, double Working, double Hours, double HoursOfOne)
{
    public static CostLine Of(SizedMachine machine, Load load, CostNumbers numbers, double hoursOfOne, decimal printedParts = 0)
    {
        CostAccount account = CostAccount.Of(machine, 1, load, numbers, printedParts);
        return new CostLine(
            (double)account.Owning, (double)account.Working, load.Hours * numbers.TimeFactor * numbers.Attempts, hoursOfOne);
    }

    /// <summary>How many are needed; at least one.</summary>
    /// <param name="work">0 or more.</param>
    public double CountAt(double work) => Math.Max(1, Math.Ceiling(work * Hours / HoursOfOne - Rounding));

    /// <summary>Of a count at the very amount where one more is needed.</summary>
    private const double Rounding = 1e-9;

    public double At(double work) => CountAt(work) * OwningOne + work * Working;

    /// <summary>The amount up to which <paramref name="count"/> are enough; infinity where the work takes no time.</summary>
    public double EnoughUpTo(int count) => Hours > 0 ? count * HoursOfOne / Hours : double.PositiveInfinity;
}
