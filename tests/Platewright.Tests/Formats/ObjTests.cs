using CsCheck;
using Platewright.Formats;
using Platewright.Geometry;

namespace Platewright.Tests.Formats;

public sealed class ObjTests
{
    private const string Square = "v 0 0 0\nv 1 0 0\nv 1 1 0\nv 0 1 0\n";

    [Fact]
    public void Obj_Read_KeepsEveryTriangle() => TestMeshes.Random.Sample(
        mesh =>
        {
            ModelFile read = TestReads.Good(TestReads.Text("a.obj", TestMeshes.Obj(mesh)));
            Assert.Equal(TestMeshes.Positions(mesh), TestMeshes.Positions(read.Parts[0].Mesh));
        },
        iter: 300);

    [Theory]
    [InlineData("f 1 2 3 4")]
    [InlineData("f 1/1 2/2 3/3 4/4")]
    [InlineData("f 1//1 2//2 3//3 4//4")]
    [InlineData("f 1/1/1 2/2/2 3/3/3 4/4/4 # and a remark")]
    [InlineData("f -4 -3 -2 -1")]
    [InlineData("f 1 2 \\\n 3 4")]
    [InlineData("f 1 2\\\r\n3 4")]
    [InlineData("\tf\t1  2 3 4  ")]
    [InlineData("# C:\\parts\\\nf 1 2 3 4")]
    public void Face_InEveryForm_BecomesAFan(string face)
    {
        Mesh mesh = TestReads.Good(TestReads.Text("a.obj", Square + face)).Parts[0].Mesh;
        Vec3 a = default, b = new(1, 0, 0), c = new(1, 1, 0), d = new(0, 1, 0);
        Assert.Equal([a, b, c, a, c, d], TestMeshes.Positions(mesh));
    }

    [Fact]
    public void ConcavePolygon_HasTheRightSignedArea()
    {
        // An L of 2 × 2 less 1 × 1; a fan may fold over itself, its signed area may not change.
        const string text = "v 1 1 0\nv 1 2 0\nv 0 2 0\nv 0 0 0\nv 2 0 0\nv 2 1 0\nf 2 3 4 5 6 1";
        Mesh mesh = TestReads.Good(TestReads.Text("a.obj", text)).Parts[0].Mesh;
        double area = 0;
        for (int t = 0; t < mesh.TriangleCount; t++)
        {
            (Vec3 a, Vec3 b, Vec3 c) = mesh.Triangle(t);
            area += (b - a).Cross(c - a).Z / 2;
        }
        Assert.Equal(3, area);
    }

    [Fact]
    public void Objects_WithFaces_ArePartsAndGroupsAreNot()
    {
        const string text = Square + "o left\ng top\nf 1 2 3\ng bottom\nf 1 3 4\no empty\no right\nf 2 3 4\no "
            + "right\nf 1 2 4\n";
        ModelFile read = TestReads.Good(TestReads.Text("a.obj", text));
        Assert.Equal(["left", "right", "right (2)"], read.Parts.Select(p => p.Name));
        Assert.Equal([2, 1, 1], read.Parts.Select(p => p.Mesh.TriangleCount));
    }

    [Fact]
    public void UnusedVertices_DoNotWidenTheBounds()
    {
        Mesh mesh = TestReads.Good(TestReads.Text("a.obj", "v 99 99 99\n" + Square + "f 2 3 4")).Parts[0].Mesh;
        Assert.Equal(new Vec3(1, 1, 0), mesh.Bounds.Max);
    }

    [Fact]
    public void ManyObjects_OverOneListOfVertices_AreReadInTime()
    {
        // Were each object to look at every vertex, this would take minutes.
        var text = new System.Text.StringBuilder(Square);
        for (int i = 0; i < 60_000; i++) text.Append("v 2 2 2\no x\nf 1 2 -1\n");
        Assert.Equal(60_000, TestReads.Good(TestReads.Text("a.obj", text.ToString())).Parts.Count);
    }

    [Fact]
    public void OneObject_HasNoName() =>
        Assert.Null(TestReads.Good(TestReads.Text("a.obj", Square + "o only\nf 1 2 3")).Parts[0].Name);

    [Theory]
    [InlineData("f 1 2 9", "line 5")]
    [InlineData("f 0 1 2", "line 5")]
    [InlineData("f -5 1 2", "line 5")]
    [InlineData("f 1 2 x", "line 5")]
    [InlineData("f 1 2 99999999999", "line 5")]
    [InlineData("\nv 1 2", "line 6")]
    [InlineData("v 1,5 2 3", "line 5")]
    [InlineData("bogus 1 2 3", "line 5")]
    public void BadLine_IsRefusedByLine(string line, string place) =>
        Assert.Equal(place, TestReads.Refused(TestReads.Text("a.obj", Square + line + "\nf 1 2 3")).Place);

    [Fact]
    public void TinyFaces_ArePassedOverWithANote()
    {
        ModelFile read = TestReads.Good(TestReads.Text("a.obj", Square + "f 1 2\nf 1 2 3"));
        Assert.Equal("small_faces", Assert.Single(read.Notes).Code);
        Assert.Equal(1, read.Parts[0].Mesh.TriangleCount);
    }

    [Fact]
    public void NoFaces_IsRefused() =>
        TestReads.Refused(TestReads.Text("a.obj", Square), says: "no triangles");
}
