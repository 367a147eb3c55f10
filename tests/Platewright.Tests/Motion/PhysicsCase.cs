using System.Text.Json;

namespace Platewright.Tests.Motion;

/// <summary>One published, derived or twice-computed case of the reference file physics-cases.json.</summary>
public sealed record PhysicsCase(
    string Id, string Group, JsonElement Input, JsonElement Expected, JsonElement Tolerance)
{
    public string Title { get; init; } = "";

    public string Source { get; init; } = "";

    /// <summary>
    /// Ids of the cases of some groups; "absent" alone where the file is, so that a test shows as skipped.
    /// </summary>
    public static TheoryData<string> Ids(params string[] groups)
    {
        var ids = new TheoryData<string>();
        foreach (PhysicsCase c in All().Where(c => groups.Contains(c.Group))) ids.Add(c.Id);
        if (ids.Count == 0) ids.Add("absent");
        return ids;
    }

    public static PhysicsCase OrSkip(string id)
    {
        Repository.SharedOrSkip("reference", "physics-cases.json");
        return All().Single(c => c.Id == id);
    }

    public double In(string key) => Input.GetProperty(key).GetDouble();

    public double[] List(string key) => [.. Input.GetProperty(key).EnumerateArray().Select(Number)];

    public double InOr(string key, double otherwise) =>
        Input.TryGetProperty(key, out JsonElement value) ? value.GetDouble() : otherwise;

    public bool Has(string key) => Input.TryGetProperty(key, out _);

    /// <summary>Compares a value found with the expected one of the same key, by the case's own tolerance.</summary>
    public void Check(string key, double found)
    {
        Assert.True(Expected.TryGetProperty(key, out JsonElement value), $"{Id}: no expected {key}.");
        Check(key, Number(value), found);
    }

    public void Check(string what, double expected, double found)
    {
        double allowed = Tolerance.TryGetProperty("abs", out JsonElement abs)
            ? abs.GetDouble()
            : Tolerance.GetProperty("rel").GetDouble() * Math.Abs(expected);
        bool same = expected.Equals(found) || Math.Abs(found - expected) <= Math.Max(allowed, Rounding);
        Assert.True(same, $"{Id}: {what} is {found}, expected {expected} ± {allowed:g3}.");
    }

    /// <summary>Checks every expected number; one this test does not know skips the case, visibly.</summary>
    public void CheckAll(Func<string, double?> found)
    {
        foreach (JsonProperty expected in Expected.EnumerateObject())
        {
            double? value = found(expected.Name);
            Assert.SkipWhen(value is null, $"{Id}: a value this test does not know: {expected.Name}");
            Check(expected.Name, value!.Value);
        }
    }

    /// <summary>Rounding around an expected 0, where a relative tolerance allows nothing.</summary>
    private const double Rounding = 1e-12;

    public static double Number(JsonElement value) => value.ValueKind == JsonValueKind.String
        ? value.GetString() == "Infinity" ? double.PositiveInfinity : throw new FormatException($"{value} is no number")
        : value.GetDouble();

    private static IEnumerable<PhysicsCase> All()
    {
        string path = Path.Combine(Repository.Shared, "reference", "physics-cases.json");
        if (!File.Exists(path)) return [];
        using var document = JsonDocument.Parse(File.ReadAllText(path));
        return [.. document.RootElement.GetProperty("cases").EnumerateArray().Select(c => new PhysicsCase(
            c.GetProperty("id").GetString()!, c.GetProperty("group").GetString()!, c.GetProperty("input").Clone(),
            c.GetProperty("expected").Clone(), c.GetProperty("tolerance").Clone())
        {
            Title = c.GetProperty("title").GetString()!,
            Source = c.GetProperty("source").GetString()!,
        })];
    }
}
