using System.IO.Compression;
using Platewright.Demo;

namespace Platewright.Tests.Demo;

/// <summary>The models of both demos are those that the sources make.</summary>
public sealed class DemoFilesTests
{
    [Fact]
    public void Workshop_MadeAnew_IsTheCommittedOne() =>
        AssertSame("workshop", Catalogue.Files(), mostBytes: 6_000_000);

    [Fact]
    public void School_MadeAnew_IsTheCommittedOne() =>
        AssertSame("school", Catalogue.SchoolFiles(), mostBytes: 1_500_000);

    private static void AssertSame(string demo, IEnumerable<(string Path, byte[] Content)> files, long mostBytes)
    {
        string models = Path.Combine(Repository.Root, "demo", demo, "models");
        List<string> made = [];
        foreach ((string path, byte[] content) in files)
        {
            made.Add(path);
            byte[] committed = File.ReadAllBytes(Path.Combine(models, path));
            Assert.True(IsSame(path, content, committed),
                $"{path} differs: run `dotnet run --project demo/workshop/sources`");
        }
        string[] present = [.. Directory.GetFiles(models, "*", SearchOption.AllDirectories)
            .Select(f => Path.GetRelativePath(models, f).Replace('\\', '/'))];
        Assert.Equal(made.Order(StringComparer.Ordinal), present.Order(StringComparer.Ordinal));
        Assert.InRange(present.Sum(f => new FileInfo(Path.Combine(models, f)).Length), 1, mostBytes);
    }

    /// <summary>Packages are compared by their entries: how well they are packed may change with the runtime.</summary>
    private static bool IsSame(string path, byte[] a, byte[] b) => Path.GetExtension(path) is ".3mf" or ".zip"
        ? Entries(a).SequenceEqual(Entries(b))
        : a.AsSpan().SequenceEqual(b);

    private static List<(string Name, string Content)> Entries(byte[] package)
    {
        using ZipArchive archive = new(new MemoryStream(package));
        return [.. archive.Entries.Select(e =>
        {
            using Stream from = e.Open();
            using MemoryStream content = new();
            from.CopyTo(content);
            return (e.FullName, Convert.ToBase64String(content.ToArray()));
        })];
    }
}
