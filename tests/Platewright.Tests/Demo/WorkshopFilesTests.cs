using System.IO.Compression;
using Platewright.Demo;

namespace Platewright.Tests.Demo;

/// <summary>The files in demo/workshop/models are those that the sources make.</summary>
public sealed class WorkshopFilesTests
{
    private const long MostBytes = 6_000_000;

    private static readonly string Models = Path.Combine(Repository.Root, "demo", "workshop", "models");

    [Fact]
    public void Files_MadeAnew_AreTheCommittedOnes()
    {
        List<string> made = [];
        foreach ((string path, byte[] content) in Catalogue.Files())
        {
            made.Add(path);
            byte[] committed = File.ReadAllBytes(Path.Combine(Models, path));
            Assert.True(IsSame(path, content, committed),
                $"{path} differs: run `dotnet run --project demo/workshop/sources`");
        }
        string[] present = [.. Directory.GetFiles(Models, "*", SearchOption.AllDirectories)
            .Select(f => Path.GetRelativePath(Models, f).Replace('\\', '/'))];
        Assert.Equal(made.Order(StringComparer.Ordinal), present.Order(StringComparer.Ordinal));
        Assert.InRange(present.Sum(f => new FileInfo(Path.Combine(Models, f)).Length), 1, MostBytes);
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
