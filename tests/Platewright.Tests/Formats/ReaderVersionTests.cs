using System.Runtime.InteropServices;
using System.Security.Cryptography;
using System.Text;
using Platewright.Formats;
using Platewright.Formats.ThreeMf;
using Platewright.Geometry;

namespace Platewright.Tests.Formats;

/// <summary>
/// Stored results hold as long as <see cref="ModelReader.Version"/> says so. Where one of these hashes changes, what is
/// read has changed: count the version up, then pin the new hash.
/// </summary>
public sealed class ReaderVersionTests
{
    private const string Square = "v 0 0 0\nv 2 0 0.5\nv 2 1 0\nv 0 1 0\n";

    [Fact]
    public void Version_IsTheOneOfTheseHashes() => Assert.Equal(1, ModelReader.Version);

    [Theory]
    [InlineData("box.stl", "dffa303245e25c54")]
    [InlineData("text.stl", "37d2294516aef845")]
    [InlineData("two.obj", "60f0c5f3d4769895")]
    [InlineData("box.ply", "dae76676f2a9f631")]
    [InlineData("plate.3mf", "b8e10ba14a192300")]
    [InlineData("tip.amf", "bf8f8c1a07aa4d8e")]
    public void Reading_IsThatOfItsVersion(string name, string hash)
    {
        ModelFile file = TestReads.Good(TestReads.Memory(name, Content(name)));
        Assert.Equal(hash, Hash(file));
    }

    private static byte[] Content(string name)
    {
        Mesh box = TestMeshes.Box(1, 2, 3);
        switch (name)
        {
            case "box.stl": return TestMeshes.BinaryStl(box);
            case "text.stl": return TestPacks.Bytes(TestMeshes.AsciiStl(box));
            case "two.obj": return TestPacks.Bytes(Square + "o a\nf 1 2 3 4\no b\nf -1 -2 -4\nf 1 2\n");
            case "box.ply": return PlyTests.Binary(box, bigEndian: false);
            case "tip.amf":
                return TestPacks.Bytes(
                    "<amf unit=\"inch\"><object id=\"1\"><mesh><vertices>"
                    + "<vertex><coordinates><x>0</x><y>0</y><z>0</z></coordinates></vertex>"
                    + "<vertex><coordinates><x>1</x><y>0</y><z>0</z></coordinates></vertex>"
                    + "<vertex><coordinates><x>0</x><y>2</y><z>0</z></coordinates></vertex></vertices>"
                    + "<volume><triangle><v1>0</v1><v2>1</v2><v3>2</v3></triangle></volume></mesh></object></amf>");
            default:
                var items = new[]
                {
                    new BuildItem(box) { Name = "x", Material = "PLA", Colour = "#010203" },
                    new BuildItem(box) { Offset = new Vec3(1, 2, 3) },
                };
                using (var stream = new MemoryStream())
                {
                    ThreeMfWriter.Write(stream, items, "Plate");
                    return stream.ToArray();
                }
        }
    }

    private static string Hash(ModelFile file)
    {
        using var hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        Add($"{file.Format} {file.Unit} {file.UnitSource} {file.Origin} {string.Join(' ', file.Notes)}");
        foreach (ModelPart part in file.Parts)
        {
            Add($"{part.Name} {part.Material} {part.Colour} {part.Type}");
            hash.AppendData(MemoryMarshal.AsBytes(part.Mesh.Vertices));
            hash.AppendData(MemoryMarshal.AsBytes(part.Mesh.Corners));
        }
        return Convert.ToHexStringLower(hash.GetHashAndReset())[..16];

        void Add(string text) => hash.AppendData(Encoding.UTF8.GetBytes(text));
    }
}
