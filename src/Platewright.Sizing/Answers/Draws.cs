using System.Collections.Immutable;
using Platewright.Sizing.Money;
using Platewright.Sizing.Statistics;

namespace Platewright.Sizing.Answers;

/// <summary>
/// Assumptions drawn within their doubt, the same for every machine in one draw, with a draw of its own for the times of each machine.
/// The range of each is taken as 95 % of a normal distribution with another spread below and above the usual value; fixed seed.
/// </summary>
/// <param name="Numbers">One for each draw.</param>
/// <param name="TimeNormals">For each draw and machine a standard normal number.</param>
public sealed record Draws(ImmutableArray<CostNumbers> Numbers, ImmutableArray<ImmutableArray<double>> TimeNormals)
{
    /// <summary>Enough that the ends of an interval hold to about a hundredth of the draws.</summary>
    public const int Usual = 1000;

    private const ulong Seed = 20;

    /// <summary>Half of 95 %, in standard deviations.</summary>
    private const double Spread95 = 1.959964;

    /// <summary>A share stays below 1, a time above 0.</summary>
    private const double Edge = 1e-3;

    public static Draws Of(CostAssumptions costs, int machines, int draws = Usual)
    {
        SplitMix64 random = new(Seed);
        List<CostNumbers> numbers = new(draws);
        List<ImmutableArray<double>> normals = new(draws);
        for (int i = 0; i < draws; i++)
        {
            CostNumbers drawn = CostNumbers.Of(costs, g => Drawn(g.Value, g.Low, g.High, Normal(ref random)));
            numbers.Add(drawn with
            {
                FailureShare = Math.Clamp(drawn.FailureShare, 0, 1 - Edge),
                ResidualShare = Math.Clamp(drawn.ResidualShare, 0, 1),
                LifeYears = Math.Max(Edge, drawn.LifeYears),
            });
            ImmutableArray<double>.Builder own = ImmutableArray.CreateBuilder<double>(machines);
            for (int m = 0; m < machines; m++) own.Add(Normal(ref random));
            normals.Add(own.MoveToImmutable());
        }
        return new Draws([.. numbers], [.. normals]);
    }

    /// <summary>The numbers of one draw for one machine, whose times may be off by these shares.</summary>
    public CostNumbers For(int draw, int machine, double lowTime, double highTime) =>
        Numbers[draw] with { TimeFactor = Math.Max(Edge, Drawn(1, 1 + lowTime, 1 + highTime, TimeNormals[draw][machine])) };

    private static double Drawn(double value, double low, double high, double normal) =>
        Math.Max(0, value + normal / Spread95 * (normal < 0 ? value - low : high - value));

    private static double Normal(ref SplitMix64 random)
    {
        const double unit = 1.0 / (1UL << 53);
        return NormalQuantile.Of(((random.Next() >> 11) + 0.5) * unit);
    }

    /// <summary>The ends between which a share of sorted numbers lies.</summary>
    internal static (double Low, double High) Ends(double[] sorted, double confidence)
    {
        double tail = (1 - confidence) / 2;
        int low = (int)Math.Floor(tail * sorted.Length), high = (int)Math.Ceiling((1 - tail) * sorted.Length) - 1;
        return (sorted[Math.Clamp(low, 0, sorted.Length - 1)], sorted[Math.Clamp(high, 0, sorted.Length - 1)]);
    }
}
