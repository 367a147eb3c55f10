using Platewright.Formats;

namespace Platewright.Tests.Formats;

public sealed class ModelFolderTests : IDisposable
{
    private readonly string _root = Directory.CreateTempSubdirectory("platewright-test-").FullName;

    public void Dispose() => Directory.Delete(_root, recursive: true);

    [Fact]
    public void List_FindsKnownExtensionsInOrdinalOrder()
    {
        Touch("b.STL", "a.3mf", "notes.txt", "sub/deep/c.Obj", "sub/d.zip", ".git/e.stl", "Z.ply", "sub/._b.stl");
        Assert.Equal(["Z.ply", "a.3mf", "b.STL", "sub/d.zip", "sub/deep/c.Obj"], List().Files);
    }

    [Fact]
    public void List_FollowsLinksOnceAndEndsInARing()
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "links need a privilege there");
        Touch("sub/a.stl", "sub/inner/b.stl");
        Directory.CreateSymbolicLink(Path.Combine(_root, "sub", "inner", "up"), _root);
        Directory.CreateSymbolicLink(Path.Combine(_root, "zub"), Path.Combine(_root, "sub"));
        Directory.CreateSymbolicLink(Path.Combine(_root, "self"), Path.Combine(_root, "self"));
        File.CreateSymbolicLink(Path.Combine(_root, "linked.stl"), Path.Combine(_root, "sub", "a.stl"));
        Assert.Equal(["linked.stl", "sub/a.stl", "sub/inner/b.stl"], List().Files);
    }

    [Fact]
    public void List_FollowsALinkOutOfTheFolder()
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "links need a privilege there");
        Touch("inside/a.stl", "outside/b.stl");
        Directory.CreateSymbolicLink(Path.Combine(_root, "inside", "more"), Path.Combine(_root, "outside"));
        ModelListing listing = ModelFolder.List(Path.Combine(_root, "inside"), TestContext.Current.CancellationToken);
        Assert.Equal(["a.stl", "more/b.stl"], listing.Files);
    }

    [Fact]
    public void List_OfAnAbsentFolder_SaysSo()
    {
        ModelListing listing = ModelFolder.List(Path.Combine(_root, "none"), TestContext.Current.CancellationToken);
        Assert.Empty(listing.Files);
        Assert.Contains("cannot be searched", Assert.Single(listing.Unusable).Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("none.stl", "no such file")]
    [InlineData("folder.stl", "no such file")]
    [InlineData("empty.stl", "empty")]
    [InlineData("odd.xyz", "not named as a model file")]
    public void Read_OfWhatIsNoModel_SaysSo(string name, string says)
    {
        Directory.CreateDirectory(Path.Combine(_root, "folder.stl"));
        Touch("empty.stl");
        File.WriteAllText(Path.Combine(_root, "odd.xyz"), "hello");
        ModelReading reading = TestReads.Disk(Path.Combine(_root, name), name);
        TestReads.Refused(reading, says: says);
    }

    [Fact]
    public void Read_FromDisk_IsTheSameAsFromMemory()
    {
        byte[] bytes = TestMeshes.BinaryStl(TestMeshes.Box(1, 2, 3));
        string path = Path.Combine(_root, "box.stl");
        File.WriteAllBytes(path, bytes);
        ModelFile disk = TestReads.Good(TestReads.Disk(path, "box.stl"));
        ModelFile memory = TestReads.Good(TestReads.Memory("box.stl", bytes));
        Assert.Equal(TestMeshes.Positions(memory.Parts[0].Mesh), TestMeshes.Positions(disk.Parts[0].Mesh));
        UnusableFile refused = TestReads.Refused(TestReads.Disk(path, "box.stl", new ReadLimits { FileBytes = 100 }));
        Assert.Contains("larger than 100 bytes", refused.Message, StringComparison.Ordinal);
    }

    private ModelListing List() => ModelFolder.List(_root, TestContext.Current.CancellationToken);

    private void Touch(params string[] names)
    {
        foreach (string name in names)
        {
            string path = Path.Combine(_root, name);
            Directory.CreateDirectory(Path.GetDirectoryName(path)!);
            File.WriteAllBytes(path, []);
        }
    }
}
