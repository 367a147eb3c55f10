using System.Collections.Concurrent;
using System.Text.Json;
using Platewright.Formats;
using Platewright.Geometry;
using Platewright.Tests.Formats;

namespace Platewright.Tests.Geometry;

/// <summary>The shared meshes as the manifest measures them: all parts of a file as one mesh, welded.</summary>
internal static class SharedMeshes
{
    private static readonly ConcurrentDictionary<string, Mesh> Loaded = new(StringComparer.Ordinal);

    public static IEnumerable<TheoryDataRow<string>> Valid => SharedModels.Valid();

    public static Mesh Of(string file) => Loaded.GetOrAdd(file, name =>
    {
        ModelFile read = TestReads.Good(TestReads.Disk(SharedModels.PathOrSkip(name)));
        return Welding.Weld(Joined([.. read.Parts.Select(p => p.Mesh)]));
    });

    public static Mesh Joined(params Mesh[] meshes)
    {
        List<Vec3> vertices = [];
        List<int> corners = [];
        foreach (Mesh mesh in meshes)
        {
            int begin = vertices.Count;
            vertices.AddRange(mesh.Vertices);
            foreach (int corner in mesh.Corners) corners.Add(begin + corner);
        }
        return new Mesh([.. vertices], [.. corners]);
    }

    /// <summary>What the manifest says of a file; the test is skipped where the shared folder is absent.</summary>
    public static JsonElement Expected(string file)
    {
        SharedModels.PathOrSkip(file);
        return SharedModels.Entry(file);
    }

    public static int Count(this JsonElement entry, params string[] path) => At(entry, path).GetInt32();

    public static double Number(this JsonElement entry, params string[] path) => At(entry, path).GetDouble();

    public static double? NumberOrNull(this JsonElement entry, params string[] path) =>
        At(entry, path) is { ValueKind: JsonValueKind.Number } number ? number.GetDouble() : null;

    public static bool Flag(this JsonElement entry, params string[] path) => At(entry, path).GetBoolean();

    /// <summary>Equal but for a share of the expected value.</summary>
    public static void AssertNear(double expected, double actual, double share) =>
        Assert.InRange(actual, expected - share * Math.Abs(expected), expected + share * Math.Abs(expected));

    private static JsonElement At(JsonElement entry, string[] path)
    {
        foreach (string name in path) entry = entry.GetProperty(name);
        return entry;
    }
}
