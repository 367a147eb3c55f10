namespace Platewright.Study.Pipeline;

/// <summary>One model file to read.</summary>
/// <param name="Path">Where it lies.</param>
/// <param name="ShownAs">The name to show, with forward slashes.</param>
public sealed record ModelPath(string Path, string ShownAs);

/// <summary>Finds the model files that a user's path stands for.</summary>
public static class ModelPaths
{
    private static readonly string[] Extensions = [".stl", ".obj", ".ply", ".3mf", ".amf", ".zip"];

    /// <summary>The file itself, or every model file in the folder and below, in the order of their names.</summary>
    /// <param name="path">A file, a folder, or nothing that is there: then the file is looked for in vain later on.</param>
    public static IReadOnlyList<ModelPath> Below(string path)
    {
        string shown = path.Replace('\\', '/');
        if (!Directory.Exists(path)) return [new ModelPath(path, shown)];
        string prefix = shown.TrimEnd('/');
        return
        [
            .. Directory.EnumerateFiles(path, "*", Everywhere)
                .Where(f => Extensions.Contains(System.IO.Path.GetExtension(f).ToLowerInvariant()))
                .Select(f => (File: f, Inside: System.IO.Path.GetRelativePath(path, f).Replace('\\', '/')))
                .OrderBy(f => f.Inside, StringComparer.Ordinal)
                .Select(f => new ModelPath(f.File, prefix.Length == 0 ? $"/{f.Inside}" : $"{prefix}/{f.Inside}")),
        ];
    }

    private static EnumerationOptions Everywhere => new()
    {
        RecurseSubdirectories = true,
        IgnoreInaccessible = true,
        AttributesToSkip = FileAttributes.Hidden | FileAttributes.System,
    };
}
