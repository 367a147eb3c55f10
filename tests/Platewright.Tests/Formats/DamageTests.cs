using Platewright.Formats;
using Platewright.Formats.ThreeMf;
using Platewright.Geometry;

namespace Platewright.Tests.Formats;

/// <summary>
/// Damaged files: cut short, with bytes changed, with pieces put elsewhere. Whatever happens to them, the answer is a
/// mesh or one sentence; any exception, hang or huge allocation fails the test.
/// </summary>
public sealed class DamageTests
{
    private const int Rounds = 400;

    /// <summary>Files larger than this are left to the other tests, so that the loop stays short.</summary>
    private const int LargestSharedBytes = 20_000;

    private static readonly ReadLimits Small = new() { Triangles = 200_000, UnpackedBytes = 16 << 20 };

    public static TheoryData<string> Made =>
        ["a.stl", "text.stl", "a.obj", "a.ply", "a.3mf", "a.amf", "zipped.amf", "pack.zip"];

    public static IEnumerable<TheoryDataRow<string>> Shared => SharedModels.Valid().Concat(SharedModels.Invalid());

    [Theory]
    [MemberData(nameof(Made))]
    public void Read_OfDamagedFiles_GivesAMeshOrASentence(string name) => Damage(name, Content(name), Rounds);

    [Theory]
    [MemberData(nameof(Shared))]
    public void Read_OfDamagedSharedFiles_GivesAMeshOrASentence(string file)
    {
        byte[] content = File.ReadAllBytes(SharedModels.PathOrSkip(file));
        Damage(file, content, content.Length <= LargestSharedBytes ? 60 : 3);
    }

    private static void Damage(string name, byte[] content, int rounds)
    {
        // A package is damaged inside as well as outside: its checksums would hide most of what is behind them.
        bool unpacked = name.EndsWith(".3mf", StringComparison.OrdinalIgnoreCase);
        for (int round = 0; round < rounds; round++)
        {
            var random = new Random(round);
            byte[] damaged = unpacked && round % 2 == 0 ? DamageInside(content, random) : Damaged(content, random);
            ModelReading reading = TestReads.Memory(name, damaged, Small);
            Assert.True(reading.Files.Count + reading.Unusable.Count > 0, $"round {round} gives nothing");
            foreach (ModelFile file in reading.Files)
            {
                Assert.All(file.Parts, p => Assert.True(p.Mesh.TriangleCount > 0));
                Assert.All(file.Parts, p => Assert.True(p.Mesh.Bounds.Min.IsFinite && p.Mesh.Bounds.Max.IsFinite));
            }
        }
    }

    private static byte[] Damaged(byte[] content, Random random)
    {
        var bytes = new List<byte>(content);
        switch (random.Next(4))
        {
            case 0:
                return bytes.GetRange(0, random.Next(bytes.Count)).ToArray();
            case 1:
                int from = random.Next(bytes.Count);
                bytes.InsertRange(
                    random.Next(bytes.Count), bytes.GetRange(from, Math.Min(random.Next(200), bytes.Count - from)));
                return bytes.ToArray();
            case 2:
                int start = random.Next(bytes.Count);
                bytes.RemoveRange(start, Math.Min(random.Next(200), bytes.Count - start));
                return bytes.ToArray();
            default:
                for (int i = 1 + random.Next(8); i > 0; i--) bytes[random.Next(bytes.Count)] = (byte)random.Next(256);
                return bytes.ToArray();
        }
    }

    private static byte[] DamageInside(byte[] package, Random random)
    {
        var entries = new List<(string, byte[])>();
        using var archive = new System.IO.Compression.ZipArchive(new MemoryStream(package));
        foreach (System.IO.Compression.ZipArchiveEntry entry in archive.Entries)
        {
            using var content = new MemoryStream();
            using (Stream packed = entry.Open()) packed.CopyTo(content);
            bool hit = content.Length > 0 && random.Next(3) > 0;
            entries.Add((entry.FullName, hit ? Damaged(content.ToArray(), random) : content.ToArray()));
        }
        return TestPacks.Zip(entries.ToArray());
    }

    private static byte[] Content(string name)
    {
        Mesh box = TestMeshes.Box(1, 2, 3);
        const string amf = "<amf unit=\"inch\"><object id=\"1\"><mesh><vertices>"
            + "<vertex><coordinates><x>0</x><y>0</y><z>0</z></coordinates></vertex>"
            + "<vertex><coordinates><x>1</x><y>0</y><z>0</z></coordinates></vertex>"
            + "<vertex><coordinates><x>0</x><y>2</y><z>0</z></coordinates></vertex></vertices>"
            + "<volume><triangle><v1>0</v1><v2>1</v2><v3>2</v3></triangle></volume></mesh></object>"
            + "<constellation id=\"2\"><instance objectid=\"1\"><rz>9</rz></instance></constellation></amf>";
        switch (name)
        {
            case "a.stl": return TestMeshes.BinaryStl(box);
            case "text.stl": return TestPacks.Bytes(TestMeshes.AsciiStl(box));
            case "a.obj":
                return TestPacks.Bytes(
                "o one\n" + TestMeshes.Obj(box) + "f 1/1/1 -2//3 \\\n 3/4 4\no two\nf 1 2 3\n");
            case "a.ply": return PlyTests.Binary(box, bigEndian: true);
            case "a.amf": return TestPacks.Bytes(amf);
            case "zipped.amf": return TestPacks.Zip(("a.amf", TestPacks.Bytes(amf)));
            case "pack.zip":
                return TestPacks.Zip(
                    ("a.stl", TestMeshes.BinaryStl(box)),
                    ("b/c.3mf", Content("a.3mf")),
                    ("d.zip", TestPacks.Zip(("e.amf", Content("a.amf")))));
            default:
                using (var stream = new MemoryStream())
                {
                    ThreeMfWriter.Write(
                        stream, [new BuildItem(box) { Name = "x", Material = "PLA" }, new BuildItem(box)]);
                    return stream.ToArray();
                }
        }
    }
}
