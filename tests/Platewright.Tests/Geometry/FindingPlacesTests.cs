using System.Globalization;
using Platewright.Geometry;
using Platewright.Study.Describing;
using Platewright.Study.Documents;

namespace Platewright.Tests.Geometry;

/// <summary>Where findings are said to be.</summary>
public sealed class FindingPlacesTests
{
    // A cube of 10 mm, outward, two triangles a side; the first two are its floor.
    private static readonly Vec3[] Corners =
        [.. Enumerable.Range(0, 8).Select(i => new Vec3(i & 1, (i >> 1) & 1, i >> 2) * 10)];

    private static readonly int[] Triangles =
    [
        0, 2, 1, 1, 2, 3, 4, 5, 6, 5, 7, 6, 0, 1, 4, 1, 5, 4, 2, 6, 3, 3, 6, 7, 0, 4, 2, 2, 4, 6, 1, 3, 5, 3, 7, 5,
    ];

    [Fact]
    public void Holes_OfCubeWithoutFloor_AreTheFloorsFourEdges()
    {
        Finding holes = Find(Triangles[6..], FindingCodes.Holes);
        Assert.Equal(1, holes.Count);
        Assert.Equal(4, holes.Places.Count);
        Assert.All(holes.Places, p => Assert.True(p.From.Z == 0 && p.To.Z == 0 && Math.Abs((p.To - p.From).Length - 10) < 1e-12));
    }

    [Fact]
    public void FlippedFace_IsMarkedAtItsMiddle()
    {
        int[] flipped = [.. Triangles];
        (flipped[0], flipped[1]) = (flipped[1], flipped[0]);
        FindingPlace place = Assert.Single(Find(flipped, FindingCodes.FlippedFaces).Places);
        Assert.Equal((Corners[0] + Corners[2] + Corners[1]) / 3, place.From);
    }

    [Fact]
    public void InsideOutShell_IsMarkedOnItsSurface()
    {
        int[] inwards = [.. Triangles.Chunk(3).SelectMany(t => new[] { t[0], t[2], t[1] })];
        FindingPlace place = Assert.Single(Find(inwards, FindingCodes.InsideOutShells).Places);
        Assert.Equal(0, place.From.Z);
    }

    [Fact]
    public void ThinWall_IsMarkedStraightThroughIt()
    {
        Vec3[] sheet = [.. Corners.Select(c => new Vec3(c.X, c.Y, c.Z * 0.02))];
        Finding thin = MeshHealth.Examine(new Mesh(sheet, Triangles)).Findings.Single(f => f.Code == FindingCodes.ThinWalls);
        Assert.Equal(Finding.MostPlaces, thin.Places.Count);
        Assert.All(thin.Places, p => Assert.Equal(0.2, Math.Abs(p.To.Z - p.From.Z), 1e-9));
    }

    [Fact]
    public void Documents_OfManyFindings_StayBelowAKilobyte()
    {
        FindingPlace[] places = [.. Enumerable.Range(0, Finding.MostPlaces).Select(i => new FindingPlace(new(-123.456789, i, 99.87654), new(i, -321.98765, 7.7)))];
        Finding[] findings = [.. Enumerable.Range(0, 6).Select(i => new Finding($"kind_{i}", 100, "") { Places = places })];
        IReadOnlyList<FindingDocument> documents = FindingsDescription.Of(findings, new Vec3(300, 200, 100));
        string json = string.Join(",", documents.SelectMany(d => d.PlacesMm).Select(p => $"[{string.Join(",", p.Select(n => n.ToString("R", CultureInfo.InvariantCulture)))}]"));

        Assert.All(documents, d => Assert.NotEmpty(d.PlacesMm));
        Assert.True(json.Length < 1024, $"{json.Length} bytes");
    }

    private static Finding Find(int[] triangles, string code) =>
        MeshHealth.Examine(new Mesh(Corners, triangles)).Findings.Single(f => f.Code == code);
}
