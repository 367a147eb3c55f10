using System.Collections.Immutable;
using System.Text.Json;
using Platewright.Sizing.Mixing;

namespace Platewright.Tests.Sizing.Mixing;

/// <summary>The published sizing instances of the shared reference files, as mixes.</summary>
internal static class PublishedMixes
{
    public static IReadOnlyList<string> Names() =>
        Directory.Exists(Folder) ? [.. Directory.GetFiles(Folder, "sizing_*.json").Select(f => Path.GetFileName(f)).Order(StringComparer.Ordinal)] : [];

    private static string Folder => Path.Combine(Repository.Shared, "reference", "scheduling");

    /// <summary>The instance and its published optimum; null for a kind of instance nothing here knows.</summary>
    public static (MixProblem Problem, decimal Optimum)? Read(string name)
    {
        using JsonDocument document = JsonDocument.Parse(File.ReadAllText(Path.Combine(Folder, name)));
        JsonElement root = document.RootElement;
        decimal optimum = root.GetProperty("best_known").GetProperty("value").GetDecimal();
        return root.GetProperty("kind").GetString() switch
        {
            "sizing_capacitated_single_source" => (SingleSource(root), optimum),
            "sizing_set_cover" => (SetCover(root), optimum),
            _ => null,
        };
    }

    private static MixProblem SingleSource(JsonElement root)
    {
        decimal[] open = Numbers(root.GetProperty("open_cost"));
        decimal[] capacity = Numbers(root.GetProperty("capacity"));
        decimal[] demand = Numbers(root.GetProperty("demand"));
        decimal[][] cost = [.. root.GetProperty("assign_cost").EnumerateArray().Select(Numbers)];
        return new(
            [.. open.Select((c, k) => new MixKind($"kind {k}", c, (double)capacity[k]) { Most = 1 })],
            [.. demand.Select((d, j) => Alone(j, [.. cost[j].Select(c => (JobOn?)new JobOn((double)d, c))]))],
            1,
            new());
    }

    private static MixProblem SetCover(JsonElement root)
    {
        decimal[] cost = Numbers(root.GetProperty("cost"));
        HashSet<int>[] rows =
            [.. root.GetProperty("row_columns_1_based").EnumerateArray().Select(r => r.EnumerateArray().Select(c => c.GetInt32() - 1).ToHashSet())];
        return new(
            [.. cost.Select((c, k) => new MixKind($"column {k}", c, 0) { Most = 1 })],
            [.. rows.Select((row, j) => Alone(j, [.. cost.Select((_, k) => row.Contains(k) ? new JobOn(0, 0) : (JobOn?)null)]))],
            1,
            new());
    }

    private static MixProject Alone(int job, ImmutableArray<JobOn?> on) => new($"project {job}", 1, [new($"job {job}", on)]);

    private static decimal[] Numbers(JsonElement array) => [.. array.EnumerateArray().Select(x => x.GetDecimal())];
}
