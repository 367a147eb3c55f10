using System.Text;
using Platewright.Formats;
using Platewright.Geometry;

namespace Platewright.Tests.Formats;

public sealed class AmfTests
{
    private const string Triangle =
        "<vertices><vertex><coordinates><x>0</x><y>0</y><z>0</z></coordinates></vertex>"
        + "<vertex><coordinates><x>1</x><y>0</y><z>0</z></coordinates></vertex>"
        + "<vertex><coordinates><x>0</x><y>2</y><z>0</z></coordinates></vertex></vertices>"
        + "<volume materialid=\"m\"><triangle><v1>0</v1><v2>1</v2><v3>2</v3></triangle></volume>";

    private const string Object = $"<object id=\"1\"><metadata type=\"name\">flag</metadata><mesh>"
        + $"{Triangle}</mesh></object>";

    private static string Amf(string content, string attributes = "") =>
        $"<?xml version=\"1.0\"?><amf {attributes}>{content}</amf>";

    private static ModelFile Good(string content, string attributes = "") =>
        TestReads.Good(TestReads.Text("a.amf", Amf(content, attributes)));

    private static UnusableFile Refused(string content, string says = "") =>
        TestReads.Refused(TestReads.Text("a.amf", Amf(content)), says);

    [Theory]
    [InlineData("", 1, UnitSource.Assumed)]
    [InlineData("unit=\"millimeter\"", 1, UnitSource.Stated)]
    [InlineData("unit=\"inch\"", 25.4, UnitSource.Stated)]
    [InlineData("unit=\"feet\"", 304.8, UnitSource.Stated)]
    [InlineData("unit=\"meter\"", 1000, UnitSource.Stated)]
    [InlineData("unit=\"micrometer\"", 0.001, UnitSource.Stated)]
    public void Units_ScaleToMillimetres(string unit, double mm, UnitSource source)
    {
        ModelFile read = Good(Object, unit);
        Assert.Equal(source, read.UnitSource);
        Assert.Equal(new Vec3(mm, 2 * mm, 0), read.Parts[0].Mesh.Bounds.Max);
    }

    [Fact]
    public void Zipped_IsTheSame()
    {
        byte[] packed = TestPacks.Zip(("inner.amf", Encoding.UTF8.GetBytes(Amf(Object))));
        ModelFile read = TestReads.Good(TestReads.Memory("a.amf", packed));
        Assert.Equal(ModelFormat.Amf, read.Format);
        Assert.Equal(1, read.Parts[0].Mesh.TriangleCount);
    }

    [Fact]
    public void Constellation_PlacesInstances()
    {
        const string plate = "<constellation id=\"9\"><instance objectid=\"1\"><deltax>10</deltax><rz>90</rz>"
            + "</instance>"
            + "<instance objectid=\"1\"><rx>90</rx><ry>90</ry></instance></constellation>";
        ModelFile read = Good(Object + plate);
        Assert.Equal(["flag", "flag (2)"], read.Parts.Select(p => p.Name));
        // A quarter turn about z takes (0, 2, 0) to (-2, 0, 0), then 10 along x.
        AssertNear(new Vec3(8, 0, 0), read.Parts[0].Mesh.Vertices[2]);
        // About x: (0, 2, 0) to (0, 0, 2); then about y: to (2, 0, 0).
        AssertNear(new Vec3(2, 0, 0), read.Parts[1].Mesh.Vertices[2]);
    }

    [Fact]
    public void NestedConstellation_IsOnePart()
    {
        const string nested = "<constellation id=\"8\"><instance objectid=\"1\"/><instance objectid=\"1\">"
            + "<deltaz>5</deltaz></instance></constellation>"
            + "<constellation id=\"9\"><instance objectid=\"8\"><deltax>1</deltax></instance></constellation>";
        ModelPart part = Assert.Single(Good(Object + nested).Parts);
        Assert.Equal(2, part.Mesh.TriangleCount);
        Assert.Equal(new Vec3(2, 2, 5), part.Mesh.Bounds.Max);
    }

    [Fact]
    public void Material_IsNameAndColour()
    {
        const string material = "<material id=\"m\"><metadata type=\"name\">PETG</metadata><color><r>1</r><g>"
            + "0.5</g><b>0</b></color></material>";
        ModelPart part = Good(Object + material).Parts[0];
        Assert.Equal("PETG", part.Material);
        Assert.Equal("#FF8000", part.Colour);
    }

    [Theory]
    [InlineData("<constellation id=\"9\"><instance objectid=\"7\"/></constellation>", "does not exist")]
    [InlineData("<constellation id=\"9\"><instance objectid=\"9\"/></constellation>", "contains itself")]
    [InlineData("<constellation id=\"8\"><instance objectid=\"9\"/></constellation><constellation id=\"9\">"
        + "<instance objectid=\"8\"/></constellation>", "contains itself")]
    [InlineData("<constellation id=\"9\"><instance objectid=\"1\"><deltax>1,5</deltax></instance></constellation>"
        + "", "“1,5” is not a number")]
    [InlineData("<constellation id=\"9\"><instance objectid=\"1\"><scale>2</scale></instance></constellation>"
        + "", "not understood")]
    [InlineData(Object, "two objects")]
    public void BadPlacing_IsRefused(string constellation, string says) =>
        Refused(Object + constellation, says: says);

    [Fact]
    public void Constellations_ThatDoubleWithoutEnd_AreRefused()
    {
        var text = new StringBuilder(Object.Replace("id=\"1\"", "id=\"c0\"", StringComparison.Ordinal));
        for (int i = 1; i <= 30; i++)
            text.Append(
                $"<constellation id=\"c{i}\"><instance objectid=\"c{i - 1}\"/><instance objectid=\"c{i - 1}\"/>"
                    + $"</constellation>");
        Refused(text.ToString(), says: "triangles");
    }

    [Theory]
    [InlineData("<v1>0</v1>", "<v1>3</v1>", "no vertex 3")]
    [InlineData("<v1>0</v1>", "", "corner is missing")]
    [InlineData("<x>1</x>", "<x>one</x>", "“one” is not a number")]
    [InlineData("<x>1</x>", "", "coordinate is missing")]
    public void BadMesh_IsRefused(string old, string bad, string says) =>
        Refused(Object.Replace(old, bad, StringComparison.Ordinal), says: says);

    [Fact]
    public void NothingToMake_IsRefused() => Refused("", says: "no triangles");

    private static void AssertNear(Vec3 expected, Vec3 actual) =>
        Assert.True((expected - actual).Length < 1e-12, $"{actual}");
}
