using Platewright.Formats;
using Platewright.Formats.Toml;

namespace Platewright.Study.Pipeline;

/// <summary>A plan and the folders on the way to it that could not be searched.</summary>
public sealed record StudySource(StudyPlan Plan, IReadOnlyList<UnusableFile> Unusable)
{
    /// <param name="path">A study file (.toml) or a folder of models.</param>
    /// <exception cref="DescriptionException">It is neither, or the study file is not right.</exception>
    public static StudySource Open(string path, CancellationToken cancel)
    {
        List<UnusableFile> unusable = [];
        if (Directory.Exists(path)) return new StudySource(StudyFile.ForFolder(path, ModelsIn(path)), unusable);
        string shown = path.Replace('\\', '/');
        if (!File.Exists(path)) throw Refused("there is no such file or folder.");
        return path.EndsWith(".toml", StringComparison.OrdinalIgnoreCase)
            ? new StudySource(StudyFile.Read(path, ModelsIn), unusable)
            : throw Refused("expected a study file (.toml) or a folder of models.");

        IReadOnlyList<string> ModelsIn(string folder) => List(folder, unusable, cancel);

        DescriptionException Refused(string message) => new(new DescriptionError(message, shown));
    }

    /// <param name="text">What a study file says.</param>
    /// <param name="file">How errors name it.</param>
    /// <param name="folder">Full path of the folder that its paths start from.</param>
    /// <param name="cancel">Stops the search of folders.</param>
    /// <exception cref="DescriptionException">It is not right.</exception>
    public static StudySource OfText(string text, string file, string folder, CancellationToken cancel)
    {
        List<UnusableFile> unusable = [];
        return new StudySource(StudyFile.Parse(text, file, folder, path => List(path, unusable, cancel)), unusable);
    }

    private static IReadOnlyList<string> List(string folder, List<UnusableFile> unusable, CancellationToken cancel)
    {
        ModelListing listing = ModelFolder.List(folder, cancel);
        unusable.AddRange(listing.Unusable);
        return [.. listing.Files.Select(f => Path.GetFullPath(Path.Combine(folder, f)))];
    }
}
