using CsCheck;
using Platewright.Formats;
using Platewright.Formats.ThreeMf;
using Platewright.Geometry;

namespace Platewright.Tests.Formats;

public sealed class ThreeMfWriterTests
{
    private static ModelFile RoundTrip(params BuildItem[] items) =>
        TestReads.Good(TestReads.Memory("a.3mf", Write(items)));

    private static byte[] Write(params BuildItem[] items)
    {
        using var stream = new MemoryStream();
        ThreeMfWriter.Write(stream, items, "Plate <1> & more");
        return stream.ToArray();
    }

    [Fact]
    public void Mesh_WrittenAndRead_KeepsEveryTriangleWithArea() => TestMeshes.Random.Sample(
        mesh =>
        {
            Vec3[] solid = TestMeshes.Positions(mesh).Chunk(3)
                .Where((_, t) => mesh.Corners.Slice(3 * t, 3).ToArray().Distinct().Count() == 3)
                .SelectMany(t => t)
                .ToArray();
            if (solid.Length == 0) return;
            ModelFile read = RoundTrip(new BuildItem(mesh));
            Assert.Equal(solid, TestMeshes.Positions(read.Parts[0].Mesh));
        },
        iter: 200);

    [Fact]
    public void Items_KeepNameLookAndPlace()
    {
        Mesh box = TestMeshes.Box(1, 2, 3);
        var quarter = new Matrix3(new Vec3(0, -1, 0), new Vec3(1, 0, 0), new Vec3(0, 0, 1));
        ModelFile read = RoundTrip(
            new BuildItem(box) { Name = "a \"b\" <c> \u0001", Material = "PETG", Colour = "#112233" },
            new BuildItem(box) { Name = "turned", Linear = quarter, Offset = new Vec3(10, 0, 0), Colour = "#445566" },
            new BuildItem(TestMeshes.Box(5, 5, 5)));

        Assert.Equal("Plate <1> & more", read.Origin.Title);
        Assert.Equal(LengthUnit.Millimetre, read.Unit);
        Assert.Equal(["a \"b\" <c> ?", "turned", "object 5"], read.Parts.Select(p => p.Name));
        Assert.Equal(["PETG", null, null], read.Parts.Select(p => p.Material));
        Assert.Equal(["#112233", "#445566", null], read.Parts.Select(p => p.Colour));
        Assert.Equal(new Bounds3(new Vec3(8, 0, 0), new Vec3(10, 1, 3)), read.Parts[1].Mesh.Bounds);
    }

    [Fact]
    public void SameItems_GiveTheSameBytes()
    {
        var item = new BuildItem(TestMeshes.Box(1, 2, 3)) { Name = "x", Material = "PLA" };
        Assert.Equal(Write(item), Write(item));
    }

    [Fact]
    public void BadItems_AreTheCallersFault()
    {
        Assert.Throws<ArgumentException>(() => Write());
        Assert.Throws<ArgumentException>(() => Write(new BuildItem(new Mesh([], []))));
        Assert.Throws<ArgumentException>(() => Write(new BuildItem(TestMeshes.Box(1, 1, 1)) { Colour = "red" }));
    }
}
