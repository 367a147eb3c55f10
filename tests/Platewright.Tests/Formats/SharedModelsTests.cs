using System.Text.Json;
using Platewright.Formats;
using Platewright.Geometry;

namespace Platewright.Tests.Formats;

/// <summary>Every file of the shared manifest against the values it states.</summary>
public sealed class SharedModelsTests
{
    public static IEnumerable<TheoryDataRow<string>> Valid => SharedModels.Valid();

    public static IEnumerable<TheoryDataRow<string>> Invalid => SharedModels.Invalid();

    [Theory]
    [MemberData(nameof(Valid))]
    public void Read_ValidFile_AgreesWithTheManifest(string file)
    {
        string path = SharedModels.PathOrSkip(file);
        JsonElement expected = SharedModels.Entry(file);

        ModelFile read = TestReads.Good(TestReads.Disk(path));

        MeshMeasures measured = MeshMeasures.Of(read);
        Assert.Equal(expected.GetProperty("triangles").GetInt32(), measured.Triangles);
        Assert.Equal(expected.GetProperty("vertices_welded").GetInt32(), measured.Vertices);
        double diagonal = measured.Bounds.Size.Length;
        AssertNear(Corner(expected, "min"), measured.Bounds.Min, 1e-6 * diagonal);
        AssertNear(Corner(expected, "max"), measured.Bounds.Max, 1e-6 * diagonal);
        AssertNear(expected.GetProperty("area_mm2"), measured.Area, 1e-6);
        AssertNear(expected.GetProperty("volume_mm3"), measured.SignedVolume, 1e-6);
    }

    [Theory]
    [MemberData(nameof(Invalid))]
    public void Read_InvalidFile_GivesOneSentence(string file)
    {
        string path = SharedModels.PathOrSkip(file);

        UnusableFile unusable = TestReads.Refused(TestReads.Disk(path, file));

        Assert.Equal(file, unusable.File);
    }

    private static Vec3 Corner(JsonElement expected, string name)
    {
        JsonElement corner = expected.GetProperty("bbox_mm").GetProperty(name);
        return new Vec3(corner[0].GetDouble(), corner[1].GetDouble(), corner[2].GetDouble());
    }

    private static void AssertNear(Vec3 expected, Vec3 actual, double tolerance)
    {
        Assert.InRange(actual.X, expected.X - tolerance, expected.X + tolerance);
        Assert.InRange(actual.Y, expected.Y - tolerance, expected.Y + tolerance);
        Assert.InRange(actual.Z, expected.Z - tolerance, expected.Z + tolerance);
    }

    private static void AssertNear(JsonElement expected, double actual, double relative)
    {
        if (expected.ValueKind == JsonValueKind.Null) return;
        double value = expected.GetDouble();
        double tolerance = relative * Math.Abs(value);
        Assert.InRange(actual, value - tolerance, value + tolerance);
    }
}
