using System.Text.Json;

namespace Platewright.Tests.Formats;

/// <summary>
/// The shared manifest of real mesh files. Its values come from CGAL 5.5.1 and plain exact sums over files read by a
/// separate small reader; tolerances are the manifest's own.
/// </summary>
internal static class SharedModels
{
    public const string Absent = "(shared models are absent)";

    private static readonly Lazy<Dictionary<string, JsonElement>> Entries = new(Load);

    public static IEnumerable<TheoryDataRow<string>> Valid() => Named(valid: true);

    public static IEnumerable<TheoryDataRow<string>> Invalid() => Named(valid: false);

    public static JsonElement Entry(string file) => Entries.Value[file];

    /// <summary>The file's path; the test is skipped where the shared folder is absent.</summary>
    public static string PathOrSkip(string file)
    {
        Repository.SharedOrSkip("models", "manifest.json");
        return Path.Combine(Repository.Shared, "models", file);
    }

    private static IEnumerable<TheoryDataRow<string>> Named(bool valid)
    {
        string[] files = Entries.Value.Where(e => e.Value.GetProperty("valid").GetBoolean() == valid)
            .Select(e => e.Key)
            .ToArray();
        return (files.Length == 0 ? [Absent] : files).Select(f => new TheoryDataRow<string>(f));
    }

    private static Dictionary<string, JsonElement> Load()
    {
        string path = Path.Combine(Repository.Shared, "models", "manifest.json");
        if (!File.Exists(path)) return [];
        using var manifest = JsonDocument.Parse(File.ReadAllText(path));
        return manifest.RootElement.GetProperty("files").EnumerateArray()
            .ToDictionary(e => e.GetProperty("file").GetString()!, e => e.Clone());
    }
}
