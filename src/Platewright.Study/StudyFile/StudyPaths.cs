namespace Platewright.Study;

/// <summary>Paths of a study: shown from its folder with forward slashes, used in full.</summary>
internal static class StudyPaths
{
    /// <summary>The full path of what a study file names; a backslash counts as a slash on every system.</summary>
    public static string Full(string folder, string named) => Path.GetFullPath(Path.Combine(folder, Slashed(named)));

    /// <summary>The path to show: from the study's folder, or the full one where it lies on another drive.</summary>
    public static string Shown(string folder, string named) =>
        Slashed(Path.GetRelativePath(folder, Full(folder, named)));

    private static string Slashed(string path) => path.Replace('\\', '/');
}
