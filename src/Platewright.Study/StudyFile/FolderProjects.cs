using System.Collections.Immutable;
using Platewright.Formats.Toml;

namespace Platewright.Study;

/// <summary>
/// Projects of a plain folder: every loose file at its top level is one, every sub-folder with all that lies deeper is
/// one.
/// </summary>
internal static class FolderProjects
{
    /// <param name="folder">The folder whose top level counts.</param>
    /// <param name="studyFolder">Where shown paths start.</param>
    /// <param name="files">Full paths of the model files below <paramref name="folder"/>, in any order.</param>
    /// <param name="defaults">What holds for every part.</param>
    /// <param name="place">Where the study file names the folder; null where none does.</param>
    public static ImmutableArray<PlannedProject> Of(
        string folder, string studyFolder, IEnumerable<string> files, PartDefaults defaults, TomlPlace? place)
    {
        var groups = files
            .Select(f => Path.GetRelativePath(folder, f).Replace('\\', '/'))
            .Order(StringComparer.Ordinal)
            .GroupBy(f => f.Split('/') is [string first, _, ..] ? first + "/" : f, StringComparer.Ordinal)
            .ToArray();
        // bracket.stl and bracket.3mf, or a folder bracket beside them: the short name would mean two things.
        HashSet<string> shared = new(StringComparer.OrdinalIgnoreCase);
        HashSet<string> seen = new(StringComparer.OrdinalIgnoreCase);
        foreach (var group in groups) if (!seen.Add(ShortName(group.Key))) shared.Add(ShortName(group.Key));
        return
        [
            .. groups.Select(group => new PlannedProject(
                shared.Contains(ShortName(group.Key)) ? group.Key : ShortName(group.Key), null, Wanted: false,
                [.. group.Select(f => Part(Path.Combine(folder, f), studyFolder, defaults, place))], place)),
        ];
    }

    /// <summary>The part that a file of a folder stands for.</summary>
    public static PlannedPart Part(string fullPath, string studyFolder, PartDefaults defaults, TomlPlace? at) => new()
    {
        Name = Path.GetFileNameWithoutExtension(fullPath),
        File = StudyPaths.Shown(studyFolder, fullPath),
        FullPath = Path.GetFullPath(fullPath),
        Material = defaults.Material,
        Colour = defaults.Colour,
        Unit = defaults.Unit,
        BrimMm = defaults.BrimMm,
        Allowance = defaults.Allowance,
        Recipe = defaults.Recipe,
        Place = at,
    };

    private static string ShortName(string key) =>
        key.EndsWith('/') ? key[..^1] : Path.GetFileNameWithoutExtension(key);
}
