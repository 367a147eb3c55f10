using System.Text.Json.Nodes;
using Platewright.Formats.Toml;
using Platewright.Server.Shelf;

namespace Platewright.Server.Uploads;

/// <summary>
/// Gives every file and folder at the top of a study's models a project of its own in the settings, so that its material, number and
/// frequency can be said, and takes out projects whose files are gone. Projects that the user wrote stay.
/// </summary>
internal static class ProjectAdoption
{
    public static void Update(KeptStudy study)
    {
        JsonObject settings = TomlJson.Read(study.Text, KeptStudy.SettingsFile);
        if (settings["project"] is not JsonArray projects) settings["project"] = projects = [];
        HashSet<string> there = [.. study.Files.Select(f => $"{KeptStudy.ModelsFolder}/{f}")];
        HashSet<string> folders = [.. there.Select(TopOf)];
        foreach (JsonObject project in projects.OfType<JsonObject>().ToArray())
        {
            string[] named = [.. NamedBy(project)];
            if (named.Length > 0 && named.All(n => IsOurs(n) && !there.Contains(n) && !folders.Contains(n))) projects.Remove(project);
        }
        HashSet<string> known = [.. projects.OfType<JsonObject>().SelectMany(NamedBy)];
        HashSet<string> names = new(projects.OfType<JsonObject>().Select(p => p["name"]?.ToString() ?? ""), StringComparer.OrdinalIgnoreCase);
        foreach (string top in folders.Order(StringComparer.Ordinal).Where(t => !known.Contains(t) && !known.Any(k => k.StartsWith($"{t}/", StringComparison.Ordinal))))
        {
            bool file = there.Contains(top);
            JsonObject project = new() { ["name"] = Free(file ? Path.GetFileNameWithoutExtension(top) : Path.GetFileName(top), names) };
            if (file) project["part"] = new JsonArray(new JsonObject { ["file"] = top });
            else project["folder"] = top;
            projects.Add(project);
        }
        if (projects.Count == 0) settings.Remove("project");
        study.Write(TomlJson.Write(settings));
    }

    private static bool IsOurs(string path) => path.StartsWith($"{KeptStudy.ModelsFolder}/", StringComparison.Ordinal);

    /// <summary>models/hood/shell.stl lies at models/hood; models/clip.stl is its own.</summary>
    private static string TopOf(string path) => string.Join('/', path.Split('/').Take(2));

    private static IEnumerable<string> NamedBy(JsonObject project)
    {
        if (project["folder"]?.ToString() is { } folder) yield return folder;
        foreach (JsonObject part in (project["part"] as JsonArray ?? []).OfType<JsonObject>())
        {
            if (part["file"]?.ToString() is { } file) yield return file;
            foreach (JsonObject one in (part["any_of"] as JsonArray ?? []).OfType<JsonObject>())
                if (one["file"]?.ToString() is { } other) yield return other;
        }
    }

    private static string Free(string name, HashSet<string> taken)
    {
        string free = name;
        for (int number = 2; !taken.Add(free); number++) free = $"{name} ({number})";
        return free;
    }
}
