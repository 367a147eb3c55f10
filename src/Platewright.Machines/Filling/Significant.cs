namespace Platewright.Machines;

/// <summary>Rounding to the digits that mean something.</summary>
internal static class Significant
{
    /// <summary>The nearest number with so many digits in all.</summary>
    public static double Round(double value, int digits)
    {
        if (value == 0 || !double.IsFinite(value)) return value;
        int before = (int)Math.Floor(Math.Log10(Math.Abs(value))) + 1;
        int after = digits - before;
        if (after >= 0) return Math.Round(value, Math.Min(after, 15));
        double step = Math.Pow(10, -after);
        return Math.Round(value / step) * step;
    }
}
