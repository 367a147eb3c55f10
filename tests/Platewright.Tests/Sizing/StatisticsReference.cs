using System.Text.Json;

namespace Platewright.Tests.Sizing;

/// <summary>One interval of the shared reference files.</summary>
/// <param name="Tolerance">Half a unit of the last digit that the file gives.</param>
internal sealed record StatisticsReference(
    string Id, int Successes, int Of, double Confidence, double Low, double High, double Tolerance)
{
    private const double TwelveDigits = 1e-11;

    private const double FourDecimals = 5.001e-5;

    public static IReadOnlyList<StatisticsReference> All() => [.. FitCases(), .. Anchors()];

    /// <summary>Groups of statistics-anchors.json, known to this class or not.</summary>
    public static IReadOnlyList<string> AnchorGroups() =>
        Open("statistics-anchors.json") is { } root
            ? [.. root.EnumerateObject().Where(p => p.Value.ValueKind == JsonValueKind.Object).Select(p => p.Name)]
            : [];

    private static IEnumerable<StatisticsReference> FitCases()
    {
        if (Open("fit-cases.json") is not { } root) yield break;
        int number = 0;
        foreach (JsonElement c in root.GetProperty("proportion_intervals").EnumerateArray())
        {
            JsonElement ends = c.GetProperty("wilson");
            int successes = c.GetProperty("successes").GetInt32();
            int of = c.GetProperty("n").GetInt32();
            double level = c.GetProperty("level").GetDouble();
            yield return new(
                $"proportion_intervals[{number++}] {successes}/{of} at {level}", successes, of, level,
                ends[0].GetDouble(), ends[1].GetDouble(), TwelveDigits);
        }
    }

    private static IEnumerable<StatisticsReference> Anchors()
    {
        if (Open("statistics-anchors.json") is not { } root) yield break;
        int number = 0;
        foreach (JsonElement c in root.GetProperty("wilson_95").GetProperty("cases").EnumerateArray())
        {
            int successes = c.GetProperty("successes").GetInt32();
            int of = c.GetProperty("n").GetInt32();
            yield return new(
                $"wilson_95[{number++}] {successes}/{of}", successes, of, 0.95, c.GetProperty("low").GetDouble(),
                c.GetProperty("high").GetDouble(), FourDecimals);
        }
    }

    private static JsonElement? Open(string file)
    {
        string path = Path.Combine(Repository.Shared, "reference", file);
        return File.Exists(path) ? JsonDocument.Parse(File.ReadAllText(path)).RootElement : null;
    }
}
