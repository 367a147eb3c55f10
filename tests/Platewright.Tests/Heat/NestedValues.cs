using System.Globalization;
using System.Text.Json;
using Platewright.Tests.Motion;

namespace Platewright.Tests.Heat;

/// <summary>Expected values that are given twice, published and recomputed, or not in every case of a kind.</summary>
internal static class NestedValues
{
    // Expected values are printed with seven figures.
    private const double Printed = 1e-6;

    private static readonly string[] Levels = ["published", "recomputed"];

    // Values that some cases of a kind give and others do not.
    private static readonly string[] MayBeAbsent =
    [
        "Ra", "Nu", "Q_W", "h_W_m2K", "no_loss_time_s", "hold_W", "energy_Wh", "stored_Wh", "hold_duty",
        "time_to_target_s", "h_side", "h_top", "h_bottom",
    ];

    public static void CheckValues(this PhysicsCase c, string key, params double[] found)
    {
        bool any = false;
        foreach (JsonElement level in LevelsOf(c.Expected))
        {
            if (level.ValueKind != JsonValueKind.Object) continue;
            if (!level.TryGetProperty(key, out JsonElement expected)) continue;
            double[] wanted = expected.ValueKind == JsonValueKind.Array
                ? [.. expected.EnumerateArray().Select(PhysicsCase.Number)]
                : [PhysicsCase.Number(expected)];
            Assert.Equal(wanted.Length, found.Length);
            for (int i = 0; i < wanted.Length; i++) CheckOne(c, key, wanted[i], found[i]);
            any = true;
        }
        Assert.True(any || MayBeAbsent.Contains(key), $"{c.Id} expects no {key}.");
    }

    public static void CheckOne(this PhysicsCase c, string key, double wanted, double found)
    {
        double allowed = c.Tolerance.TryGetProperty("abs", out JsonElement abs)
            ? abs.GetDouble()
            : c.Tolerance.GetProperty("rel").GetDouble() * Math.Abs(wanted);
        allowed += Printed * Math.Abs(wanted);
        Assert.True(
            Math.Abs(found - wanted) <= allowed || found.Equals(wanted),
            string.Create(CultureInfo.InvariantCulture, $"{c.Id} {key}: {found} is not {wanted} ± {allowed}"));
    }

    private static IEnumerable<JsonElement> LevelsOf(JsonElement expected)
    {
        yield return expected;
        foreach (string level in Levels)
            if (expected.ValueKind == JsonValueKind.Object && expected.TryGetProperty(level, out JsonElement inner))
                yield return inner;
    }
}
