using System.Collections.Immutable;
using Platewright.Sizing.Mixing;

namespace Platewright.Tests.Sizing.Mixing;

/// <summary>Invented work of middling size: larger kinds can more and cost more.</summary>
internal static class SeededMixes
{
    public static MixProblem Of(int projects, int kinds, double share)
    {
        var random = new Random(7);
        MixKind[] list =
        [
            .. Enumerable.Range(0, kinds).Select(k => new MixKind($"kind {k}", 20 + 15 * k + random.Next(10), 40 + random.Next(40))
            {
                Price = 200 + 150 * k, FloorM2 = 0.25 * random.Next(1, 9), PeakW = 200 + 100 * k, Most = 6,
            }),
        ];
        ImmutableArray<JobOn?> Row()
        {
            int least = (int)(kinds * Math.Pow(random.NextDouble(), 2));
            double hours = 1 + random.Next(8);
            return [.. Enumerable.Range(0, kinds).Select(k => k < least ? (JobOn?)null : new JobOn(hours, random.Next(1, 6), hours * (0.5 + random.NextDouble()) + kinds - k))];
        }
        return new(
            [.. list],
            [
                .. Enumerable.Range(0, projects).Select(p => new MixProject(
                    $"project {p}", random.Next(1, 6), [.. Enumerable.Range(0, random.Next(1, 3)).Select(j => new MixJob($"job {j}", Row()))])),
            ],
            share,
            new());
    }
}
