using System.IO.Compression;
using Platewright.Formats;

namespace Platewright.Tests.Formats;

public sealed class PackTests
{
    private static readonly byte[] Box = TestMeshes.BinaryStl(TestMeshes.Box(1, 2, 3));

    [Fact]
    public void Pack_GivesEveryModelAndEveryBadOneByItself()
    {
        byte[] pack = TestPacks.Zip(
            ("inner/b.STL", Box), ("readme.txt", [1]), ("a.obj", TestPacks.Bytes("v 1")), ("inner\\c.stl", Box),
            ("__MACOSX/._a.stl", [0]), (".hidden.stl", [0]), ("more.zip", TestPacks.Zip(("d.stl", Box))));
        ModelReading reading = TestReads.Memory("pack.zip", pack);
        Assert.Equal(
            ["pack.zip/inner/b.STL", "pack.zip/inner/c.stl", "pack.zip/more.zip/d.stl"],
            reading.Files.Select(f => f.File));
        UnusableFile bad = Assert.Single(reading.Unusable);
        Assert.Equal("pack.zip/a.obj", bad.File);
        Assert.StartsWith("pack.zip/a.obj, line 1: ", bad.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Pack_WithoutModels_IsRefused()
    {
        ModelReading reading = TestReads.Memory("pack.zip", TestPacks.Zip(("readme.txt", [1])));
        TestReads.Refused(reading, says: "no model files");
    }

    [Fact]
    public void Pack_TooDeep_IsRefused()
    {
        byte[] pack = TestPacks.Zip(("a.stl", Box));
        for (int i = 0; i < 3; i++) pack = TestPacks.Zip(("b.zip", pack));
        TestReads.Refused(TestReads.Memory("p.zip", pack), says: "more than 3 deep");
        TestReads.Good(TestReads.Memory("p.zip", pack, new ReadLimits { ArchiveDepth = 4 }));
    }

    [Fact]
    public void Bomb_ByRatio_IsRefused()
    {
        byte[] pack = TestPacks.Zip(("zeros.stl", new byte[20 << 20]));
        Assert.True(pack.Length < 100_000);
        UnusableFile refused = TestReads.Refused(TestReads.Memory("p.zip", pack));
        Assert.Contains("250 times its packed size", refused.Message, StringComparison.Ordinal);
        Assert.Equal("p.zip/zeros.stl", refused.File);
    }

    [Fact]
    public void Bomb_ByTotalSize_IsRefused()
    {
        byte[] pack = TestPacks.Zip(Enumerable.Range(0, 9).Select(i => ($"{i}.stl", Box)).ToArray());
        ModelReading reading = TestReads.Memory("p.zip", pack, new ReadLimits { UnpackedBytes = 5 * Box.Length });
        Assert.Equal(5, reading.Files.Count);
        Assert.All(reading.Unusable, u => Assert.Contains("unpacks to more than", u.Message, StringComparison.Ordinal));
        Assert.Equal(4, reading.Unusable.Count);
    }

    [Fact]
    public void TooManyEntries_AreRefused()
    {
        byte[] pack = TestPacks.Zip(Enumerable.Range(0, 9).Select(i => ($"{i}.stl", Box)).ToArray());
        UnusableFile refused = TestReads.Refused(
            TestReads.Memory("p.zip", pack, new ReadLimits { ArchiveEntries = 8 }));
        Assert.Contains("more than 8 files", refused.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void FlippedByte_InAStoredEntry_IsNoticed()
    {
        using var stream = new MemoryStream();
        using (var archive = new ZipArchive(stream, ZipArchiveMode.Create, leaveOpen: true))
        {
            using Stream entry = archive.CreateEntry("a.stl", CompressionLevel.NoCompression).Open();
            entry.Write(Box);
        }
        byte[] pack = stream.ToArray();
        pack[200] ^= 1;
        TestReads.Refused(TestReads.Memory("p.zip", pack), says: "checksum");
    }

    [Fact]
    public void Encrypted_IsRefused()
    {
        byte[] pack = TestPacks.Zip(("a.stl", Box));
        // Bit 0 of the general purpose flags, in the local header (offset 6) and the central directory (offset 8).
        pack[6] |= 1;
        pack[pack.AsSpan().IndexOf("PK\x01\x02"u8) + 8] |= 1;
        TestReads.Refused(TestReads.Memory("p.zip", pack), says: "encrypted");
    }

    [Fact]
    public void NamesThatClimb_StayNames()
    {
        // Nothing is ever written to disk; the name is only shown, and dots at its start count as hidden.
        ModelReading reading = TestReads.Memory("p.zip", TestPacks.Zip(("../../etc/a.stl", Box), ("b\n.stl", Box)));
        Assert.Equal("p.zip/b?.stl", Assert.Single(reading.Files).File);
    }
}
