using System.Globalization;

namespace Platewright.Study.Judgement;

/// <summary>What scaling a part down does to it, in a sentence.</summary>
public static class ScaleConsequence
{
    private const double ExampleBoreMm = 8;

    /// <param name="scale">0 to 1.</param>
    public static string At(double scale)
    {
        // Rounded down: a scale that is named is one that fits.
        double percent = Math.Floor(scale * 1000) / 10;
        return string.Create(CultureInfo.InvariantCulture,
            $"At {percent:0.#} % an {ExampleBoreMm:0} mm bore is {ExampleBoreMm * percent / 100:0.00} mm; mating and threaded parts stop fitting.");
    }
}
