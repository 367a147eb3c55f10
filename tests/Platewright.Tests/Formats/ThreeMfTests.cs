using System.Globalization;
using System.Text;
using Platewright.Formats;
using Platewright.Geometry;

namespace Platewright.Tests.Formats;

public sealed class ThreeMfTests
{
    private const string Production =
        "xmlns:p=\"http://schemas.microsoft.com/3dmanufacturing/production/2015/06\"";

    private const string Object = $"<object id=\"1\" name=\"tip\">{TestPacks.Tetrahedron}</object>";

    private static ModelFile Good(string model, params (string, string)[] more) =>
        TestReads.Good(TestReads.Memory("a.3mf", TestPacks.ThreeMf(model, more)));

    private static UnusableFile Refused(string model, string says = "") =>
        TestReads.Refused(TestReads.Memory("a.3mf", TestPacks.ThreeMf(model)), says);

    [Theory]
    [InlineData("micron", 0.001)]
    [InlineData("millimeter", 1)]
    [InlineData("centimeter", 10)]
    [InlineData("inch", 25.4)]
    [InlineData("foot", 304.8)]
    [InlineData("meter", 1000)]
    public void Units_ScaleToMillimetres(string unit, double mm)
    {
        // The six units of the core specification, section 3.1.
        ModelFile read = Good(TestPacks.Model(Object, "<item objectid=\"1\"/>", $"unit=\"{unit}\""));
        Assert.Equal(UnitSource.Stated, read.UnitSource);
        Assert.Equal(mm, read.Unit.ToMillimetres());
        Assert.Equal(new Vec3(mm, mm, mm), read.Parts[0].Mesh.Bounds.Max);
        Assert.Null(read.Parts[0].Name);
    }

    [Fact]
    public void Transforms_AreRowVectorsAndNest()
    {
        // Inner: double x. Outer: turn x to y (row 0 is the image of x). Then move.
        string resources = Object
            + "<object id=\"2\"><components><component objectid=\"1\" transform=\"2 0 0 0 1 0 0 0 1 10 0 0\"/>"
            + "</components></object>";
        ModelFile read = Good(TestPacks.Model(
            resources, "<item objectid=\"2\" transform=\"0 1 0 -1 0 0 0 0 1 0 0 5\"/>"));
        // (1,0,0) → (12,0,0) → (0,12,0) → (0,12,5).
        Assert.Equal(new Vec3(0, 12, 6), read.Parts[0].Mesh.Bounds.Max);
        Assert.Equal(new Vec3(-1, 10, 5), read.Parts[0].Mesh.Bounds.Min);
    }

    [Fact]
    public void Mirroring_KeepsFacesOutward()
    {
        Mesh mesh = Good(TestPacks.Model(
            Object, "<item objectid=\"1\" transform=\"-1 0 0 0 1 0 0 0 1 0 0 0\"/>")).Parts[0].Mesh;
        Assert.Equal(1.0 / 6, MeshMeasures.Of(mesh).SignedVolume, 12);
    }

    [Fact]
    public void Items_AreOnePartEachWithNamesOfTheirOwn()
    {
        ModelFile read = Good(TestPacks.Model(
            Object + $"<object id=\"2\" type=\"support\">{TestPacks.Tetrahedron}</object>",
            "<item objectid=\"1\"/><item objectid=\"1\" transform=\"1 0 0 0 1 0 0 0 1 9 0 0\"/><item "
                + "objectid=\"2\"/>"));
        Assert.Equal(["tip", "tip (2)", "object 2"], read.Parts.Select(p => p.Name));
        Assert.Equal([ObjectType.Model, ObjectType.Model, ObjectType.Support], read.Parts.Select(p => p.Type));
        Assert.Equal(9, read.Parts[1].Mesh.Bounds.Min.X);
    }

    [Fact]
    public void BaseMaterials_AreMaterialAndColour()
    {
        const string materials = "<basematerials id=\"5\"><base name=\"PLA\" displaycolor=\"#FF0000\"/>"
            + "<base name=\"PETG\" displaycolor=\"#00ff0080\"/></basematerials>";
        string drawn = $"<object id=\"1\" pid=\"5\" pindex=\"1\">{TestPacks.Tetrahedron}</object>";
        ModelPart part = Good(TestPacks.Model(materials + drawn, "<item objectid=\"1\"/>")).Parts[0];
        Assert.Equal("PETG", part.Material);
        Assert.Equal("#00FF00", part.Colour);
    }

    [Fact]
    public void MixedMaterials_CountAsThatOfMostTriangles()
    {
        const string materials = "<basematerials id=\"5\"><base name=\"PLA\" displaycolor=\"#FF0000\"/>"
            + "<base name=\"TPU\" displaycolor=\"#0000FF\"/></basematerials>";
        string mesh = TestPacks.Tetrahedron
            .Replace("v3=\"3\"/>", "v3=\"3\" pid=\"5\" p1=\"1\"/>", StringComparison.Ordinal);
        string drawn = $"<object id=\"1\" pid=\"5\" pindex=\"0\">{mesh}</object>";
        ModelFile read = Good(TestPacks.Model(materials + drawn, "<item objectid=\"1\"/>"));
        Assert.Equal("TPU", read.Parts[0].Material);
        Assert.Equal("several_looks", Assert.Single(read.Notes).Code);
    }

    [Fact]
    public void ProductionPaths_ReachOtherPartsAndTheirUnits()
    {
        const string outer = "<object id=\"2\"><components><component objectid=\"1\" p:path=\"/3D/more.model\"/>"
            + "</components></object>";
        ModelFile read = Good(
            TestPacks.Model(
                outer, "<item objectid=\"2\"/><item objectid=\"1\" p:path=\"/3D/more.model\"/>", Production),
            ("3D/more.model", TestPacks.Model(Object, "", "unit=\"inch\"")));
        Assert.Equal(2, read.Parts.Count);
        Assert.Equal(new Vec3(25.4, 25.4, 25.4), read.Parts[0].Mesh.Bounds.Max);
        Assert.Equal(read.Parts[0].Mesh.Bounds, read.Parts[1].Mesh.Bounds);
    }

    [Fact]
    public void Metadata_SaysWhoMadeIt()
    {
        string model = $"""
            <model xmlns="{TestPacks.Core}"><metadata name="Title">Clip</metadata>
            <metadata name="Designer">A. Maker</metadata><metadata name="LicenseTerms">CC0</metadata>
            <resources>{Object}</resources><build><item objectid="1"/></build></model>
            """;
        Assert.Equal(new ModelOrigin("Clip", "A. Maker", "CC0", null), Good(model).Origin);
    }

    [Fact]
    public void RequiredExtension_Unknown_IsRefusedByName()
    {
        UnusableFile refused = Refused(TestPacks.Model(
            Object, "<item objectid=\"1\"/>", "xmlns:q=\"http://example.org/bend\" requiredextensions=\"q\""));
        Assert.Contains("“q” (http://example.org/bend)", refused.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void OptionalExtension_Unknown_IsPassedOver() => Good(TestPacks.Model(
        Object + "<q:thing id=\"9\"><q:deep/></q:thing>", "<item objectid=\"1\" q:note=\"x\"/>"
            + "", "xmlns:q=\"http://example.org/bend\""));

    [Theory]
    [InlineData("<object id=\"1\"><components><component objectid=\"1\"/></components></object>")]
    [InlineData("<object id=\"2\"><components><component objectid=\"1\"/></components></object>"
        + "<object id=\"1\"><components><component objectid=\"2\"/></components></object>")]
    public void Components_InARing_AreRefused(string resources) =>
        Refused(TestPacks.Model(resources, "<item objectid=\"1\"/>"), says: "contains itself");

    [Fact]
    public void Components_ThatDoubleWithoutEnd_AreRefusedAtOnce()
    {
        // 30 levels of two components each: 4 × 2^30 triangles from a few kilobytes.
        var resources = new StringBuilder(Object);
        for (int id = 2; id <= 31; id++)
        {
            resources.Append(
                CultureInfo.InvariantCulture, $"<object id=\"{id}\"><components><component objectid=\"{id - 1}\"/>");
            resources.Append(CultureInfo.InvariantCulture, $"<component objectid=\"{id - 1}\"/></components></object>");
        }
        UnusableFile refused = Refused(TestPacks.Model(resources.ToString(), "<item objectid=\"31\"/>"));
        Assert.Contains("more than 20000000 triangles", refused.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void Components_TooDeep_AreRefusedInWhateverOrder(bool deepestLast)
    {
        var resources = new StringBuilder(Object);
        for (int id = 2; id <= 5000; id++)
            resources.Append(
                CultureInfo.InvariantCulture, $"<object id=\"{id}\"><components><component "
                    + $"objectid=\"{id - 1}\"/></components></object>");
        IEnumerable<int> order = Enumerable.Range(1, 5000);
        string build = string.Concat((deepestLast
            ? order
            : order.Reverse()).Select(id => $"<item objectid=\"{id}\"/>"));
        Refused(TestPacks.Model(resources.ToString(), build), says: "deep");
    }

    [Theory]
    [InlineData("<item objectid=\"7\"/>", "no object 7")]
    [InlineData("", "build is empty")]
    [InlineData("<item objectid=\"1\" transform=\"1 0 0 0 1 0 0 0 1 0 0\"/>", "11 numbers")]
    [InlineData("<item objectid=\"1\" transform=\"1 0 0 0 1 0 0 0 0 0 0 0\"/>", "flattens")]
    [InlineData("<item objectid=\"1\" transform=\"1,0 0 0 0 1 0 0 0 1 0 0 0\"/>", "“1,0” is not a number")]
    [InlineData("<item objectid=\"1\" transform=\"1e300 0 0 0 1 0 0 0 1 0 0 0\"/>", "too large")]
    [InlineData("<item/>", "no “objectid”")]
    [InlineData("<item objectid=\"2\"/>", "“other”")]
    public void BadItem_IsRefused(string build, string says)
    {
        string other = $"<object id=\"2\" type=\"other\">{TestPacks.Tetrahedron}</object>";
        UnusableFile refused = Refused(TestPacks.Model(Object + other, build));
        Assert.Contains(says, refused.Message, StringComparison.Ordinal);
        Assert.StartsWith("3D/model.model", refused.Place, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("v1=\"0\"", "v1=\"4\"", "no vertex 4")]
    [InlineData("v1=\"0\"", "v1=\"-1\"", "not a whole number")]
    [InlineData("v1=\"0\"", "", "corner is missing")]
    [InlineData("x=\"1\"", "", "coordinate is missing")]
    [InlineData("x=\"1\"", "x=\"NaN\"", "not a number")]
    [InlineData("x=\"1\"", "x=\"1e400\"", "not a number")]
    [InlineData("x=\"1\"", "x=\"1e39\"", "too large")]
    [InlineData("v3=\"1\"", "v3=\"1\" pid=\"8\" p1=\"0\"", "no property group 8")]
    public void BadMesh_IsRefused(string old, string bad, string says)
    {
        string mesh = TestPacks.Tetrahedron.Replace(old, bad, StringComparison.Ordinal);
        string message = Refused(TestPacks.Model($"<object id=\"1\">{mesh}</object>", "<item objectid=\"1\"/>"
            + "")).Message;
        Assert.Contains(says, message, StringComparison.Ordinal);
    }

    [Fact]
    public void Entities_AreRefused()
    {
        // The well-known attack: ten entities, each ten times the one before.
        string model = "<?xml version=\"1.0\"?>\n<!DOCTYPE m [<!ENTITY a \"aaaaaaaaaa\"><!ENTITY b "
            + "\"&a;&a;&a;&a;&a;&a;&a;&a;&a;&a;\">]>\n"
            + TestPacks.Model(Object, "<item objectid=\"1\"/>").Replace("tip", "&b;", StringComparison.Ordinal);
        UnusableFile refused = Refused(model);
        Assert.Contains("document type definition", refused.Message, StringComparison.Ordinal);
        Assert.Equal("3D/model.model line 2", refused.Place);
    }

    [Fact]
    public void BottomlessNesting_IsRefused()
    {
        string deep = string.Concat(Enumerable.Repeat("<a>", 5000)) + string.Concat(Enumerable.Repeat("</a>", 5000));
        Refused(TestPacks.Model(deep + Object, "<item objectid=\"1\"/>"), says: "nested");
    }

    [Fact]
    public void BeamsAlone_AreLeftOutWithANote()
    {
        const string beams = "xmlns:b=\"http://schemas.microsoft.com/3dmanufacturing/beamlattice/2017/02\" "
            + "requiredextensions=\"b\"";
        const string lattice = "<object id=\"2\"><mesh><vertices><vertex x=\"0\" y=\"0\" z=\"0\"/><vertex "
            + "x=\"1\" y=\"0\" z=\"0\"/></vertices>"
            + "<b:beamlattice radius=\"1\" minlength=\"0.1\"><b:beams><b:beam v1=\"0\" v2=\"1\"/></b:beams>"
            + "</b:beamlattice></mesh></object>";
        ModelFile read = Good(TestPacks.Model(Object + lattice, "<item objectid=\"1\"/><item objectid=\"2\"/>", beams));
        Assert.Single(read.Parts);
        Assert.Equal(["beams_left_out", "part_left_out"], read.Notes.Select(n => n.Code));
    }

    [Theory]
    [InlineData("<model xmlns=\"http://example.org/else\"/>", "not a 3MF model")]
    [InlineData("<model", "not well formed")]
    [InlineData("", "not well formed")]
    public void OtherXml_IsRefused(string model, string says) =>
        Refused(model, says: says);

    [Fact]
    public void MissingParts_AreRefused()
    {
        TestReads.Refused(TestReads.Text("a.3mf", "hello"), says: "not a zip");
        byte[] empty = TestPacks.Zip(("x.txt", [1]));
        TestReads.Refused(TestReads.Memory("a.3mf", empty), says: "relationships");
        string path = TestPacks.Model("", "<item objectid=\"1\" p:path=\"/3D/none.model\"/>", Production);
        Refused(path, says: "3D/none.model");
    }
}
