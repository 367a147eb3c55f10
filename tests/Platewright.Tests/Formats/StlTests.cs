using System.Buffers.Binary;
using System.Text;
using CsCheck;
using Platewright.Formats;
using Platewright.Geometry;

namespace Platewright.Tests.Formats;

public sealed class StlTests
{
    private const string Triangle = "facet normal 0 0 1 outer loop vertex 0 0 0 vertex 1 0 0 vertex 0 1 0 "
        + "endloop endfacet";

    [Fact]
    public void Binary_WrittenAndRead_KeepsEveryTriangle() => TestMeshes.Random.Sample(
        mesh =>
        {
            ModelFile read = TestReads.Good(TestReads.Memory("a.stl", TestMeshes.BinaryStl(mesh)));
            Assert.Equal(TestMeshes.Positions(mesh), TestMeshes.Positions(read.Parts[0].Mesh));
        },
        iter: 300);

    [Fact]
    public void Ascii_Read_KeepsEveryTriangle() => TestMeshes.Random.Sample(
        mesh =>
        {
            ModelFile read = TestReads.Good(TestReads.Text("a.stl", TestMeshes.AsciiStl(mesh)));
            Assert.Equal(TestMeshes.Positions(mesh), TestMeshes.Positions(read.Parts[0].Mesh));
        },
        iter: 300);

    [Fact]
    public void Binary_Read_IsWelded()
    {
        byte[] bytes = TestMeshes.BinaryStl(TestMeshes.Box(3, 4, 5));
        Mesh mesh = TestReads.Good(TestReads.Memory("a.STL", bytes)).Parts[0].Mesh;
        Assert.Equal(8, mesh.Vertices.Length);
        Assert.Equal(12, mesh.TriangleCount);
    }

    [Fact]
    public void Binary_OfManyChunks_KeepsTrianglesAndSharesVertices()
    {
        // 200 × 200 squares: more facets than several chunks hold, with vertices shared across their borders.
        const int side = 200;
        var vertices = new Vec3[(side + 1) * (side + 1)];
        for (int i = 0; i < vertices.Length; i++) vertices[i] = new Vec3(
            i % (side + 1), i / (side + 1), i * 7919 % 101);
        var corners = new List<int>();
        for (int y = 0; y < side; y++)
        {
            for (int x = 0; x < side; x++)
            {
                int a = y * (side + 1) + x;
                corners.AddRange([a, a + 1, a + side + 1, a + 1, a + side + 2, a + side + 1]);
            }
        }
        var mesh = new Mesh(vertices, corners.ToArray());

        Mesh read = TestReads.Good(TestReads.Memory("grid.stl", TestMeshes.BinaryStl(mesh))).Parts[0].Mesh;

        Assert.Equal(TestMeshes.Positions(mesh), TestMeshes.Positions(read));
        Assert.Equal(vertices.Length, read.Vertices.Length);
    }

    [Fact]
    public void Binary_Read_IsWeldedAsWeldingWould() => TestMeshes.Random.Sample(
        mesh =>
        {
            Mesh read = TestReads.Good(TestReads.Memory("a.stl", TestMeshes.BinaryStl(mesh))).Parts[0].Mesh;
            Mesh welded = Welding.Weld(new Mesh(read.Vertices.ToArray(), read.Corners.ToArray()));
            Assert.Same(read, Welding.Weld(read));
            Assert.Equal(welded.Vertices.ToArray(), read.Vertices.ToArray());
            Assert.Equal(welded.Corners.ToArray(), read.Corners.ToArray());
        },
        iter: 100);

    [Fact]
    public void Binary_CornersOfManyTriangles_AreOneVertexEach()
    {
        Mesh box = TestMeshes.Box(3, 4, 5);
        Vec3[] corners = TestMeshes.Positions(box);
        Mesh apart = new(corners, Enumerable.Range(0, corners.Length).ToArray());
        Mesh read = TestReads.Good(TestReads.Memory("a.stl", TestMeshes.BinaryStl(apart))).Parts[0].Mesh;
        Mesh welded = Welding.Weld(apart);
        Assert.Equal(welded.Vertices.ToArray(), read.Vertices.ToArray());
        Assert.Equal(welded.Corners.ToArray(), read.Corners.ToArray());
    }

    [Theory]
    [InlineData("solid a\n" + Triangle + "\nendsolid a")]
    [InlineData("SOLID\r\n" + Triangle + "\r\nENDSOLID\r\n")]
    [InlineData("\uFEFFsolid a b c\n" + Triangle + "\nendsolid")]
    [InlineData("   \n\n solid\n" + Triangle + "\n endsolid")]
    [InlineData("solid a " + Triangle + " endsolid a")]
    [InlineData("some remark before it\nsolid a\n" + Triangle + "\nendsolid")]
    [InlineData(Triangle)]
    public void Ascii_InAnySpacingAndCase_IsRead(string text)
    {
        ModelFile read = TestReads.Good(TestReads.Text("a.stl", text));
        Assert.Equal([default, new Vec3(1, 0, 0), new Vec3(0, 1, 0)], TestMeshes.Positions(read.Parts[0].Mesh));
    }

    [Fact]
    public void Ascii_NumbersInEveryForm_AreRead()
    {
        const string text = "solid\nfacet normal -nan(ind) nan nan\nouter loop\n"
            + "vertex +1 -2. .5\nvertex 1e2 2.E+1 3.1e-2\nvertex -0 12345678901234567890 0.1\nendloop\n"
            + "endfacet\nendsolid";
        Vec3[] positions = TestMeshes.Positions(TestReads.Good(TestReads.Text("a.stl", text)).Parts[0].Mesh);
        Assert.Equal(
            [new Vec3(1, -2, 0.5), new Vec3(100, 20, 0.031), new Vec3(0, 12345678901234567890, 0.1)], positions);
    }

    [Theory]
    [InlineData("1,5", "decimal point")]
    [InlineData("3.1+e2", "not a number")]
    [InlineData("nan", "not a number")]
    [InlineData("Infinity", "not a number")]
    [InlineData("1e", "not a number")]
    [InlineData("0x10", "not a number")]
    [InlineData("1e39", "too large")]
    [InlineData("1e999", "too large")]
    public void Ascii_WhatIsNoCoordinate_IsRefusedByLine(string number, string says)
    {
        string text = $"solid\nfacet normal 0 0 1\nouter loop\nvertex 0 {number} 0\nvertex 1 0 0\nvertex 0 1 0\n"
            + $"endloop\nendfacet";
        UnusableFile refused = TestReads.Refused(TestReads.Text("a.stl", text));
        Assert.Equal("line 4", refused.Place);
        Assert.Contains(says, refused.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("solid a\nfacet normal 0 0 1\nouter loop\nvertex 0 0 0\nvertex 1 0 0\n", "line 6")]
    [InlineData("solid a\nfacet normal 0 0 1\nouter loop\nvertex 0 0 0\nvertex 1 0 0\nendloop\nendfacet", "line 6")]
    [InlineData("solid a\n" + Triangle + "\nfacet normal 0 0", "line 3")]
    [InlineData("solid a\nnonsense\n", "line 2")]
    public void Ascii_BrokenOff_IsRefusedByLine(string text, string place) =>
        Assert.Equal(place, TestReads.Refused(TestReads.Text("a.stl", text)).Place);

    [Fact]
    public void Ascii_OfManyPieces_KeepsTrianglesAndFindsTheFirstFault()
    {
        var text = new StringBuilder("solid a\n");
        const int facets = 40_000;
        for (int i = 0; i < facets; i++)
        {
            string z = i is 30_000 or 39_000 ? "1,5" : "1.5";
            text.Append(
                $"  facet normal 0 0 1\n    outer loop\n      vertex {i} 0 0\n      vertex 0 {i} 0\n"
                + $"      vertex 0 0 {z}\n    endloop\n  endfacet\n");
        }
        // Seven lines for a facet; the last vertex is on its fifth.
        string broken = text.Append("endsolid a\n").ToString();
        Assert.Equal($"line {1 + 7 * 30_000 + 5}", TestReads.Refused(TestReads.Text("a.stl", broken)).Place);

        string whole = broken.Replace("1,5", "1.5", StringComparison.Ordinal);
        Vec3[] positions = TestMeshes.Positions(TestReads.Good(TestReads.Text("a.stl", whole)).Parts[0].Mesh);
        Assert.Equal(3 * facets, positions.Length);
        for (int i = 0; i < facets; i++)
        {
            Assert.Equal(new Vec3(i, 0, 0), positions[3 * i]);
            Assert.Equal(new Vec3(0, 0, 1.5), positions[3 * i + 2]);
        }
    }

    [Fact]
    public void Ascii_SeveralSolids_AreOnePartWithANote()
    {
        ModelFile read = TestReads.Good(
            TestReads.Text("a.stl", $"solid a\n{Triangle}\nendsolid a\nsolid b\n{Triangle}\nendsolid b\n"));
        Assert.Equal(2, Assert.Single(read.Parts).Mesh.TriangleCount);
        Assert.Equal("several_solids", Assert.Single(read.Notes).Code);
    }

    [Fact]
    public void Binary_ThatBeginsWithSolid_IsBinary()
    {
        byte[] bytes = TestMeshes.BinaryStl(TestMeshes.Box(1, 2, 3));
        Encoding.ASCII.GetBytes("solid of facets with a vertex").CopyTo(bytes, 0);
        Assert.Equal(12, TestReads.Good(TestReads.Memory("a.stl", bytes)).Parts[0].Mesh.TriangleCount);
    }

    [Theory]
    [InlineData("hello", "too few")]
    [InlineData("This is a letter, and it goes on for longer than the header of a binary file: 84 bytes.", "text")]
    public void OtherText_IsRefused(string text, string says) => TestReads.Refused(TestReads.Text("a.stl", text), says);

    [Fact]
    public void Binary_NotANumber_IsRefusedByByte()
    {
        byte[] bytes = TestMeshes.BinaryStl(TestMeshes.Box(1, 2, 3));
        BinaryPrimitives.WriteSingleLittleEndian(bytes.AsSpan(84 + 50 + 12), float.NaN);
        Assert.Equal("byte 146", TestReads.Refused(TestReads.Memory("a.stl", bytes)).Place);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(11)]
    [InlineData(13)]
    [InlineData(uint.MaxValue)]
    public void Binary_CountThatLies_IsRefused(uint count)
    {
        byte[] bytes = TestMeshes.BinaryStl(TestMeshes.Box(1, 2, 3));
        BinaryPrimitives.WriteUInt32LittleEndian(bytes.AsSpan(80), count);
        Assert.Equal("byte 80", TestReads.Refused(TestReads.Memory("a.stl", bytes)).Place);
    }

    [Fact]
    public void Binary_BytesAfterTheLastFacet_ArePassedOverWithANote()
    {
        byte[] bytes = [.. TestMeshes.BinaryStl(TestMeshes.Box(1, 2, 3)), 1, 2, 3];
        Assert.Equal("trailing_bytes", Assert.Single(TestReads.Good(TestReads.Memory("a.stl", bytes)).Notes).Code);
    }

    [Fact]
    public void AnyUnit_GivenByTheUser_ScalesToMillimetres()
    {
        byte[] bytes = TestMeshes.BinaryStl(TestMeshes.Box(1, 2, 3));
        ModelFile read = TestReads.Good(TestReads.Memory("a.stl", bytes, unit: LengthUnit.Inch));
        Assert.Equal(UnitSource.Overridden, read.UnitSource);
        Assert.Equal(new Vec3(25.4, 50.8, 3 * 25.4), read.Parts[0].Mesh.Bounds.Size);
    }

    [Fact]
    public void Triangles_BeyondTheLimit_AreRefused()
    {
        var limits = new ReadLimits { Triangles = 11 };
        byte[] binary = TestMeshes.BinaryStl(TestMeshes.Box(1, 2, 3));
        byte[] ascii = Encoding.UTF8.GetBytes(TestMeshes.AsciiStl(TestMeshes.Box(1, 2, 3)));
        TestReads.Refused(TestReads.Memory("a.stl", binary, limits), says: "limit");
        TestReads.Refused(TestReads.Memory("a.stl", ascii, limits), says: "limit");
    }
}
