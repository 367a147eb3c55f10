using System.Diagnostics.CodeAnalysis;

namespace Platewright.Server.Shelf;

/// <summary>Relative paths that come from outside and must stay inside a folder, on every system.</summary>
internal static class InsidePath
{
    private const int LongestName = 120;
    private const int LongestPath = 400;
    private const int Deepest = 16;

    // What Windows keeps for devices, whatever the extension.
    private static readonly HashSet<string> Reserved = new(StringComparer.OrdinalIgnoreCase)
    {
        "CON", "PRN", "AUX", "NUL", "COM1", "COM2", "COM3", "COM4", "COM5", "COM6", "COM7", "COM8", "COM9",
        "LPT1", "LPT2", "LPT3", "LPT4", "LPT5", "LPT6", "LPT7", "LPT8", "LPT9",
    };

    /// <summary>The path with forward slashes, or why it is not taken.</summary>
    public static bool TryClean(string sent, [NotNullWhen(true)] out string? path, [NotNullWhen(false)] out string? wrong)
    {
        path = null;
        string[] names = sent.Replace('\\', '/').Split('/');
        wrong = sent.Length == 0 || sent.Length > LongestPath ? $"its path must have 1 to {LongestPath} letters"
            : names.Length > Deepest ? $"it lies more than {Deepest} folders deep"
            : names.Select(WrongIn).FirstOrDefault(w => w is not null);
        if (wrong is null) path = string.Join('/', names);
        return path is not null;
    }

    /// <summary>The full path of a clean path below a folder.</summary>
    /// <exception cref="ArgumentException">It would leave the folder: it was not clean.</exception>
    public static string Combine(string folder, string clean)
    {
        string root = Path.GetFullPath(folder) + Path.DirectorySeparatorChar;
        string full = Path.GetFullPath(Path.Combine(root, clean));
        return full.StartsWith(root, StringComparison.Ordinal)
            ? full
            : throw new ArgumentException($"The path leaves the folder: \"{clean}\".", nameof(clean));
    }

    private static string? WrongIn(string name)
    {
        if (name.Length == 0 || name is "." or "..") return "its path leads out of the study or has an empty part";
        if (name.Length > LongestName) return $"a name in its path has more than {LongestName} letters";
        if (name.Any(c => char.IsControl(c) || "<>:\"|?*".Contains(c, StringComparison.Ordinal))) return "a name in its path has a letter that not every system takes";
        if (name[0] == ' ' || name[^1] is ' ' or '.') return "a name in its path begins or ends with a blank or a dot";
        return Reserved.Contains(name.Split('.')[0]) ? $"the name {name} is kept for a device" : null;
    }
}
