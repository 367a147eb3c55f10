namespace Platewright.Tests;

/// <summary>Where the repository and the shared reference material lie.</summary>
internal static class Repository
{
    public static string Root { get; } = FindRoot();

    /// <summary>The folder of shared reference cases and meshes: PLATEWRIGHT_SHARED, else beside the project.</summary>
    public static string Shared { get; } =
        Environment.GetEnvironmentVariable("PLATEWRIGHT_SHARED") is { Length: > 0 } named
            ? Path.GetFullPath(named)
            : Path.GetFullPath(Path.Combine(Root, "..", "shared"));

    /// <summary>The path below <see cref="Shared"/>; the running test is skipped, visibly, where it is absent.</summary>
    public static string SharedOrSkip(params string[] parts)
    {
        string path = Path.Combine([Shared, .. parts]);
        Assert.SkipWhen(!File.Exists(path) && !Directory.Exists(path), $"absent: {string.Join('/', parts)} (set PLATEWRIGHT_SHARED)");
        return path;
    }

    private static string FindRoot()
    {
        DirectoryInfo? folder = new(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "Platewright.slnx"))) folder = folder.Parent;
        return folder?.FullName ?? throw new InvalidOperationException("Platewright.slnx is not above the tests.");
    }
}
