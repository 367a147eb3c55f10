namespace Platewright.Machines;

/// <summary>What a value usually is on machines of a class.</summary>
/// <param name="Value">The most likely one.</param>
/// <param name="Range">Where it lies 95 times of 100.</param>
/// <param name="Source">Where that is known from.</param>
public sealed record TypicalValue(double Value, ValueRange Range, string Source)
{
    public const string Practice = "common practice, no source";

    public static TypicalValue Of(double value, double low, double high, string source = Practice) =>
        new(value, new ValueRange(low, high), source);
}
