using CsCheck;
using Platewright.Fit;
using Platewright.Machines;
using Platewright.Sizing;

namespace Platewright.Tests.Sizing;

/// <summary>Parts and projects for the sizing tests.</summary>
internal static class Work
{
    public static readonly HeatLimits Cool = new(220, 60, 0);

    public static readonly HeatLimits Warm = new(250, 100, 45);

    public const double Bead = 0.45;

    public static PartNeed Need(
        double turned, double tilted, double leastScale = 1, HeatLimits? heat = null, double? wall = null,
        bool tilt = true) => PartNeed.Of(
        new SizeNeed(turned, tilted, tilted - 0.01, [new(turned, turned)], [new(tilted, tilted)]),
        new(turned + 5, turned, turned),
        new Allowance(Tilt: tilt, LeastScale: leastScale),
        heat,
        wall);

    public static SizedPart Part(string id, PartNeed need, string? anyOf = null) => new(id, anyOf, need);

    public static SizedProject Project(string id, params SizedPart[] parts) => new(id, [.. parts]);

    public static Gen<T> OneOf<T>(params T[] values) => Gen.Int[0, values.Length - 1].Select(i => values[i]);

    /// <summary>
    /// Projects of one to four parts, some alternatives, with heat, walls and allowances of all kinds.
    /// </summary>
    public static readonly Gen<SizedProject[]> Projects =
        Gen.Select(
                Gen.Int[50, 90], Gen.Int[0, 30], OneOf(1, 0.9, 0.8), OneOf(null, Cool, Warm),
                OneOf<double?>(null, 0.3, 0.5, 2), Gen.Bool, OneOf(null, "a", "b"))
            .Select((turned, less, scale, heat, wall, tilt, anyOf) =>
                (Need: Need(turned, turned - less, scale, heat, wall, tilt), AnyOf: anyOf))
            .Array[1, 4]
            .Array[1, 8]
            .Select(projects => projects
                .Select((parts, i) => new SizedProject(
                    $"p{i}", [.. parts.Select((p, j) => new SizedPart($"p{i}-{j}", p.AnyOf, p.Need))], i % 7 != 6))
                .ToArray());
}
