using System.Globalization;

namespace Platewright.Study.Estimating;

/// <summary>What a pose costs against a better one, as "tilted to fit: +14 cm³ support, +0:48 h".</summary>
internal static class CostSentence
{
    private const double CubicMmPerCubicCm = 1000;

    /// <summary>Less support than this is not worth a word, mm³.</summary>
    private const double LeastSupportMm3 = 50;

    public static string Of(string why, double supportMm3, double seconds)
    {
        long minutes = (long)Math.Round(Math.Abs(seconds) / 60);
        string time = string.Create(CultureInfo.InvariantCulture, $"+{minutes / 60}:{minutes % 60:00} h");
        string support = Math.Abs(supportMm3) < LeastSupportMm3
            ? ""
            : string.Create(CultureInfo.InvariantCulture, $"{supportMm3 / CubicMmPerCubicCm:+0.0;−0.0} cm³ support, ");
        return $"{why}: {support}{time}";
    }
}
