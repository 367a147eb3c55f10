namespace Platewright.Formats;

/// <summary>Finds the model files in a folder and its sub-folders.</summary>
public static class ModelFolder
{
    /// <summary>The extensions of model files, for sentences.</summary>
    public const string KnownExtensions = ".stl, .obj, .ply, .3mf, .amf or .zip";

    /// <summary>
    /// Whether the name is that of a model file or of a pack of them, in upper or lower case; hidden ones are not.
    /// </summary>
    public static bool IsModelName(string name)
    {
        if (name.Split('/').Any(s => s.StartsWith('.') || s == "__MACOSX")) return false;
        return Path.GetExtension(name).ToLowerInvariant() is ".stl" or ".obj" or ".ply" or ".3mf" or ".amf" or ".zip";
    }

    /// <summary>
    /// The model files below a folder, as paths from it with forward slashes, in ordinal order. Names that begin with a
    /// dot are passed over. Links to folders are followed, each real folder once.
    /// </summary>
    /// <returns>The files, and the folders that could not be searched.</returns>
    public static ModelListing List(string folder, CancellationToken cancel = default)
    {
        var files = new List<string>();
        var unusable = new List<UnusableFile>();
        var seen = new HashSet<string>(StringComparer.Ordinal);
        var left = new Stack<string>([""]);
        while (left.TryPop(out string? relative))
        {
            cancel.ThrowIfCancellationRequested();
            try
            {
                var directory = new DirectoryInfo(Path.Combine(folder, relative));
                if (seen.Add(RealPath(directory))) Search(directory, relative, files, left);
            }
            catch (Exception e) when (e is IOException or UnauthorizedAccessException)
            {
                string shown = relative.Length == 0 ? folder.Replace('\\', '/') : relative;
                var refusal = new ModelFileException(
                    shown, null, "the folder cannot be searched", "check that it may be read");
                unusable.Add(refusal.ToUnusable());
            }
        }
        files.Sort(StringComparer.Ordinal);
        unusable.Sort((a, b) => string.CompareOrdinal(a.File, b.File));
        return new ModelListing(files, unusable);
    }

    private static void Search(DirectoryInfo directory, string relative, List<string> files, Stack<string> left)
    {
        // Real folders are pushed last so that they are searched before links to them.
        var links = new List<string>();
        var real = new List<string>();
        foreach (
            FileSystemInfo entry in directory.EnumerateFileSystemInfos().OrderBy(e => e.Name, StringComparer.Ordinal))
        {
            string path = relative.Length == 0 ? entry.Name : $"{relative}/{entry.Name}";
            bool isFolder = (entry.Attributes & FileAttributes.Directory) != 0;
            if (!isFolder && IsModelName(entry.Name)) files.Add(path);
            else if (isFolder && !entry.Name.StartsWith('.')) (entry.LinkTarget is null ? real : links).Add(path);
        }
        foreach (string path in Enumerable.Reverse(links).Concat(Enumerable.Reverse(real))) left.Push(path);
    }

    private static string RealPath(DirectoryInfo directory)
    {
        // Links may stand anywhere on the way, so every step is resolved.
        string path = Path.TrimEndingDirectorySeparator(directory.FullName);
        string? parent = Path.GetDirectoryName(path);
        if (parent is null) return path;
        var step = new DirectoryInfo(Path.Combine(RealPath(new DirectoryInfo(parent)), Path.GetFileName(path)));
        return step.ResolveLinkTarget(returnFinalTarget: true) is { } target
            ? RealPath(new DirectoryInfo(target.FullName))
            : step.FullName;
    }
}

/// <summary>What a folder holds.</summary>
/// <param name="Files">Paths from the folder with forward slashes, in ordinal order.</param>
/// <param name="Unusable">Sub-folders that could not be searched.</param>
public sealed record ModelListing(IReadOnlyList<string> Files, IReadOnlyList<UnusableFile> Unusable);
