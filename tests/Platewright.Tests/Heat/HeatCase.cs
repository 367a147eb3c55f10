using System.Globalization;
using System.Text.Json;

namespace Platewright.Tests.Heat;

/// <summary>One case of the reference file physics-cases.json; the source of each is named there.</summary>
public sealed record HeatCase(string Id, string Group, string Title, string Kind, string Source, JsonElement Input, JsonElement Expected, JsonElement Tolerance)
{
    public override string ToString() => Id;

    public static IEnumerable<HeatCase> All()
    {
        string path = Path.Combine(Repository.Shared, "reference", "physics-cases.json");
        if (!File.Exists(path)) yield break;
        using var document = JsonDocument.Parse(File.ReadAllText(path));
        foreach (JsonElement c in document.RootElement.GetProperty("cases").EnumerateArray())
            yield return new HeatCase(
                Text(c, "id"), Text(c, "group"), Text(c, "title"), Text(c, "kind"), Text(c, "source"),
                c.GetProperty("input").Clone(), c.GetProperty("expected").Clone(), c.GetProperty("tolerance").Clone());
    }

    public static TheoryData<string> Ids(Func<string, bool> ofGroup)
    {
        var ids = new TheoryData<string>();
        foreach (HeatCase c in All()) if (ofGroup(c.Group)) ids.Add(c.Id);
        if (ids.Count == 0) ids.Add("absent");
        return ids;
    }

    public static HeatCase Get(string id)
    {
        Repository.SharedOrSkip("reference", "physics-cases.json");
        HeatCase? found = All().FirstOrDefault(c => c.Id == id);
        Assert.SkipWhen(found is null, $"no case of these groups: {id}");
        return found!;
    }

    public bool Has(string key) => Input.TryGetProperty(key, out _);

    public double In(string key) => Input.GetProperty(key).GetDouble();

    public double[] List(string key) => [.. Input.GetProperty(key).EnumerateArray().Select(e => e.GetDouble())];

    /// <summary>The values expected, one level of "published" and "recomputed" taken off.</summary>
    public void Check(string key, params double[] found)
    {
        bool any = false;
        foreach (JsonElement level in Levels())
        {
            if (level.ValueKind != JsonValueKind.Object || !level.TryGetProperty(key, out JsonElement expected)) continue;
            double[] wanted = expected.ValueKind == JsonValueKind.Array
                ? [.. expected.EnumerateArray().Select(e => e.GetDouble())]
                : [Number(expected)];
            Assert.Equal(wanted.Length, found.Length);
            for (int i = 0; i < wanted.Length; i++) CheckOne(key, wanted[i], found[i]);
            any = true;
        }
        Assert.True(any || Missing.Contains(key), $"{Id} expects no {key}: add it to what may be absent, or read the case.");
    }

    public void CheckOne(string key, double wanted, double found)
    {
        double allowed = Tolerance.TryGetProperty("abs", out JsonElement abs)
            ? abs.GetDouble()
            : Tolerance.GetProperty("rel").GetDouble() * Math.Abs(wanted);
        // Expected values are printed with seven figures.
        allowed += 1e-6 * Math.Abs(wanted);
        Assert.True(
            Math.Abs(found - wanted) <= allowed || found == wanted,
            string.Create(CultureInfo.InvariantCulture, $"{Id} {key}: {found} is not {wanted} ± {allowed}"));
    }

    // Values that some cases of a kind give and others do not.
    private static readonly string[] Missing = ["Ra", "Nu", "Q_W", "h_W_m2K", "no_loss_time_s", "hold_W", "energy_Wh", "stored_Wh", "hold_duty", "time_to_target_s", "mean_W", "cost"];

    private IEnumerable<JsonElement> Levels()
    {
        yield return Expected;
        foreach (string level in new[] { "published", "recomputed" })
            if (Expected.ValueKind == JsonValueKind.Object && Expected.TryGetProperty(level, out JsonElement inner)) yield return inner;
    }

    private static double Number(JsonElement e) =>
        e.ValueKind == JsonValueKind.String && e.GetString() == "Infinity" ? double.PositiveInfinity : e.GetDouble();

    private static string Text(JsonElement c, string key) => c.GetProperty(key).GetString()!;
}
