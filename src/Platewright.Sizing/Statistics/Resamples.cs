using System.Numerics;
using System.Runtime.InteropServices;

namespace Platewright.Sizing.Statistics;

/// <summary>
/// How often each project of a sample appears in each resample of a bootstrap: drawn once, then applied to every
/// machine and measure, so that they are compared on the same resamples. Source: Efron and Tibshirani, An Introduction
/// to the Bootstrap, 1993, chapter 6; as many projects as the sample has are drawn with replacement (multinomial
/// counts), for every size of sample.
/// </summary>
public sealed class Resamples
{
    /// <summary>Enough for the ends of a 95 % interval: Efron and Tibshirani, 1993, section 14.3.</summary>
    public const int UsualDraws = 1000;

    /// <summary>Any number; kept so that the same study always gives the same answer.</summary>
    public const ulong UsualSeed = 20_250_917;

    /// <summary>Project by project, the counts of all draws.</summary>
    private readonly ushort[] _counts;

    private Resamples(int size, int draws, ushort[] counts)
    {
        Size = size;
        Draws = draws;
        _counts = counts;
    }

    /// <summary>Projects in the sample, and in each resample.</summary>
    public int Size { get; }

    /// <summary>Number of resamples.</summary>
    public int Draws { get; }

    /// <summary>Draws them; the same for the same arguments on every machine.</summary>
    /// <param name="size">Projects in the sample, 0 or more; size times draws is at most 2³¹ − 57.</param>
    /// <param name="draws">Number of resamples, 1 or more.</param>
    /// <param name="seed">Any number.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public static Resamples Of(int size, int draws = UsualDraws, ulong seed = UsualSeed)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(size);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(draws);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(size, Array.MaxLength / draws);
        var random = new SplitMix64(seed);
        var counts = new ushort[size * draws];
        for (int draw = 0; draw < draws; draw++)
        {
            for (int i = 0; i < size; i++) checked { counts[random.Below(size) * draws + draw]++; }
        }
        return new Resamples(size, draws, counts);
    }

    /// <summary>
    /// For each column of numbers its total in every resample, Σ count · number. Each total is added up project by
    /// project, whatever the width of the processor's vectors, so that it comes out the same to the last bit.
    /// </summary>
    /// <param name="columns">Each with one finite number for each project.</param>
    /// <returns>For each column one total for each draw.</returns>
    /// <exception cref="ArgumentException">A column has another length than the sample.</exception>
    public double[][] Totals(IReadOnlyList<double[]> columns)
    {
        foreach (double[] column in columns)
        {
            if (column.Length != Size)
            {
                throw new ArgumentException(
                    $"Expected {Size} numbers in a column, found {column.Length}.", nameof(columns));
            }
        }
        double[][] totals = [.. columns.Select(_ => new double[Draws])];
        var counts = new double[Draws];
        for (int project = 0; project < Size; project++)
        {
            ReadOnlySpan<ushort> drawn = _counts.AsSpan(project * Draws, Draws);
            for (int draw = 0; draw < counts.Length; draw++) counts[draw] = drawn[draw];
            for (int column = 0; column < totals.Length; column++)
            {
                double number = columns[column][project];
                if (number != 0) Add(totals[column], counts, number);
            }
        }
        return totals;
    }

    /// <summary>Adds count · number of one project to the totals of all resamples.</summary>
    /// <param name="totals">One for each draw.</param>
    /// <param name="project">Its place in the sample.</param>
    /// <param name="number">Finite.</param>
    internal void Add(double[] totals, int project, double number)
    {
        if (number == 0) return;
        ReadOnlySpan<ushort> drawn = _counts.AsSpan(project * Draws, Draws);
        for (int draw = 0; draw < totals.Length; draw++) totals[draw] += drawn[draw] * number;
    }

    private static void Add(double[] totals, double[] counts, double number)
    {
        Span<Vector<double>> wide = MemoryMarshal.Cast<double, Vector<double>>(totals.AsSpan());
        ReadOnlySpan<Vector<double>> wideCounts = MemoryMarshal.Cast<double, Vector<double>>(counts.AsSpan());
        // A product rounded, then a sum rounded: a fused step would differ from one processor to the next.
        for (int i = 0; i < wide.Length; i++) wide[i] += wideCounts[i] * number;
        for (int i = wide.Length * Vector<double>.Count; i < totals.Length; i++) totals[i] += counts[i] * number;
    }
}
