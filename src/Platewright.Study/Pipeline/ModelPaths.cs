using Platewright.Formats;

namespace Platewright.Study.Pipeline;

/// <summary>One model file to read.</summary>
/// <param name="Path">Where it lies.</param>
/// <param name="ShownAs">The name to show, with forward slashes.</param>
public sealed record ModelPath(string Path, string ShownAs);

/// <summary>The model files that the user's paths stand for.</summary>
/// <param name="Files">Files as they are named, folders with everything below them.</param>
/// <param name="Unusable">Folders that cannot be searched, and folders that hold no model.</param>
public sealed record ModelPaths(IReadOnlyList<ModelPath> Files, IReadOnlyList<UnusableFile> Unusable)
{
    /// <param name="paths">Files and folders. What is not there counts as a file, to be looked for in vain later on.</param>
    public static ModelPaths Below(IReadOnlyList<string> paths, CancellationToken cancel)
    {
        List<ModelPath> files = [];
        List<UnusableFile> unusable = [];
        foreach (string path in paths)
        {
            string shown = path.Replace('\\', '/');
            if (!Directory.Exists(path))
            {
                files.Add(new ModelPath(path, shown));
                continue;
            }
            ModelListing listing = ModelFolder.List(path, cancel);
            string prefix = shown.EndsWith('/') ? shown : $"{shown}/";
            files.AddRange(listing.Files.Select(f => new ModelPath(Path.Combine(path, f), prefix + f)));
            unusable.AddRange(listing.Unusable);
            if (listing.Files.Count == 0 && listing.Unusable.Count == 0)
            {
                string sentence = $"{shown}: the folder holds no model files ({ModelFolder.KnownExtensions}).";
                unusable.Add(new UnusableFile(shown, null, sentence));
            }
        }
        return new ModelPaths(files, unusable);
    }
}
