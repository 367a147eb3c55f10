using System.Collections.Immutable;
using Platewright.Sizing.Mixing;

namespace Platewright.Sizing.Benchmarks;

/// <summary>Seeded work of many parts on machines of many sizes: larger ones can more, and cost more.</summary>
internal static class InventedWork
{
    private const int Seed = 20;

    private static readonly double[] HeatShares = [0.7, 0.9, 1];

    public static MixProblem Of(int parts, int kinds, double share, MixLimits limits)
    {
        var random = new Random(Seed);
        var sizes = new double[kinds];
        var heats = new int[kinds];
        var speeds = new double[kinds];
        var list = new MixKind[kinds];
        for (int k = 0; k < kinds; k++)
        {
            sizes[k] = 120 + 380.0 * random.NextDouble();
            heats[k] = random.Next(3);
            speeds[k] = 0.6 + 0.8 * random.NextDouble();
            double price = Math.Round(150 + sizes[k] * sizes[k] / 120 * (1 + 0.5 * heats[k]) * speeds[k]);
            list[k] = new($"kind {k}", (decimal)Math.Round(price / 36 + 10, 2), 300 + random.Next(300))
            {
                Price = (decimal)price,
                FloorM2 = Math.Round(sizes[k] * sizes[k] * 4e-6, 3),
                PeakW = Math.Round(sizes[k] * 1.5 + 400 * heats[k]),
                Most = 40,
            };
        }
        var projects = ImmutableArray.CreateBuilder<MixProject>();
        for (int made = 0; made < parts;)
        {
            int count = Math.Min(parts - made, 1 + random.Next(4) * random.Next(2));
            int heat = Array.FindIndex(HeatShares, s => random.NextDouble() < s);
            var jobs = ImmutableArray.CreateBuilder<MixJob>();
            for (int i = 0; i < count; i++)
            {
                double edge = 20 + 400 * Math.Pow(random.NextDouble(), 3);
                double hours = Math.Pow(edge / 100, 2) * (0.5 + random.NextDouble());
                jobs.Add(new(
                    $"part {made++}",
                    [.. Enumerable.Range(0, kinds).Select(k => On(edge, hours, heat, sizes[k], heats[k], speeds[k], random))]));
            }
            projects.Add(new($"project {projects.Count}", 1 + random.Next(5), jobs.ToImmutable()));
        }
        return new([.. list], projects.ToImmutable(), share, limits);
    }

    private static JobOn? On(double edge, double hours, int heat, double size, int heats, double speed, Random random)
    {
        double own = hours / speed * (0.9 + 0.2 * random.NextDouble());
        decimal cost = (decimal)Math.Round(own * (0.05 + size / 4000) + hours * 0.3, 4);
        return edge > size || heat > heats ? null : new(Math.Round(own, 4), cost, own + 0.3);
    }
}
