namespace Platewright.Sizing.Hours;

/// <summary>How far the machine's true times may lie from those given.</summary>
public sealed record TimeDoubt
{
    /// <summary>A doubt.</summary>
    /// <param name="low">Shortest true time over the time given, greater than 0, at most 1.</param>
    /// <param name="high">Longest true time over the time given, at least 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">A factor is outside its range.</exception>
    public TimeDoubt(double low, double high)
    {
        if (!(low > 0 && low <= 1))
            throw new ArgumentOutOfRangeException(nameof(low), low, "Expected more than 0, at most 1.");
        if (!(high >= 1 && double.IsFinite(high)))
            throw new ArgumentOutOfRangeException(nameof(high), high, "Expected 1 or more.");
        Low = low;
        High = high;
    }

    /// <summary>Times are as given.</summary>
    public static TimeDoubt None { get; } = new(1, 1);

    /// <summary>Shortest true time over the time given.</summary>
    public double Low { get; }

    /// <summary>Longest true time over the time given.</summary>
    public double High { get; }
}
