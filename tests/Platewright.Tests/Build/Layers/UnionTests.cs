using Platewright.Build.Layers;
using Platewright.Geometry;
using Platewright.Tests.Geometry;

namespace Platewright.Tests.Build.Layers;

/// <summary>Shells that overlap, hold each other or are turned inside out: areas of unions known by formula.</summary>
public sealed class UnionTests
{
    /// <summary>Unions are measured in rows: the midpoint rule over w/8.</summary>
    private const double InRows = 5e-4;

    [Fact]
    public void Cut_TwoBoxes_HasTheirUnionAndSaysSo()
    {
        LayeredPart part = Cuts.Of(SharedMeshes.Joined(Box(0, 0, 20, 10), Box(12, 4, 30, 18)));
        // 200 + 18·14 − 8·6.
        Check(part, 200 + 252 - 48, outline: 2 * (30 + 18), islands: 1);
        Assert.All(part.Sections, s => Assert.True(s.Overlapping));
    }

    [Fact]
    public void Cut_BoxWithCylinderThroughItsSide_HasTheirUnion()
    {
        Mesh cylinder = Solids.Moved(Cuts.Turned(200, (5, 0), (5, 2)), new(20, 5, 0));
        LayeredPart part = Cuts.Of(SharedMeshes.Joined(Box(0, 0, 20, 10), cylinder));
        Check(part, 200 + Cuts.PolygonArea(200, 5) / 2, outline: 50 + 200 * 5 * Math.Sin(Math.PI / 200), islands: 1);
    }

    [Fact]
    public void Cut_ThreeThatOverlap_HasTheirUnion()
    {
        LayeredPart part = Cuts.Of(SharedMeshes.Joined(Box(0, 0, 20, 20), Box(10, 10, 30, 30), Box(5, 15, 25, 35)));
        // Inclusion and exclusion: 3·400 − 100 (1,2) − 15·5 (1,3) − 15·15 (2,3) + 10·5 (all).
        Check(part, 1200 - 100 - 75 - 225 + 50, outline: null, islands: 1);
    }

    [Fact]
    public void Cut_SameShellTwice_IsThere()
    {
        LayeredPart part = Cuts.Of(SharedMeshes.Joined(Box(0, 0, 20, 10), Box(1e-3, 0, 20, 10)));
        Check(part, 200, outline: 60, islands: 1);
    }

    [Fact]
    public void Cut_ShellInsideOut_IsSolid()
    {
        LayeredPart part = Cuts.Of(Solids.InsideOut(Box(0, 0, 20, 10)));
        Check(part, 200, outline: 60, islands: 1);
        Assert.All(part.Sections, s => Assert.All(s.Loops, l => Assert.True(Outline.SignedArea(l) > 0)));
    }

    [Fact]
    public void Cut_Cavity_IsHollow()
    {
        LayeredPart part = Cuts.Of(SharedMeshes.Joined(Box(0, 0, 20, 10), Solids.InsideOut(Box(5, 2, 15, 8))));
        Check(part, 200 - 60, outline: 60 + 32, islands: 1);
        Assert.All(part.Sections, s => Assert.False(s.Overlapping));
    }

    [Fact]
    public void Cut_SolidApartFromAShellInsideOut_HasBoth()
    {
        LayeredPart part = Cuts.Of(SharedMeshes.Joined(Box(0, 0, 20, 10), Solids.InsideOut(Box(40, 0, 50, 10))));
        Check(part, 300, outline: 100, islands: 2);
        Assert.All(part.Sections, s => Assert.All(s.Loops, l => Assert.True(Outline.SignedArea(l) > 0)));
    }

    [Fact]
    public void Cut_ShellWithinAShellOfTheSameSide_IsOneSolid()
    {
        LayeredPart part = Cuts.Of(SharedMeshes.Joined(Box(0, 0, 20, 10), Box(5, 2, 15, 8)));
        Check(part, 200, outline: 60, islands: 1);
    }

    [Fact]
    public void Cut_OverlapTurnedAboutZ_HasTheSameUnion()
    {
        Mesh two = SharedMeshes.Joined(Box(0, 0, 20, 10), Box(12, 4, 30, 18));
        foreach (double degrees in new[] { 0, 7.5, 20, 61.7 })
        {
            LayeredPart part = Cuts.Of(two, linear: Cuts.TurnedZ(degrees));
            Check(part, 200 + 252 - 48, outline: null, islands: 1);
        }
    }

    [Fact]
    public void Cut_CubeWithoutASide_IsClosedAndSaysSo()
    {
        Mesh cube = Box(0, 0, 20, 10);
        // The two triangles of the side y = 0.
        int[] corners = cube.Corners.ToArray();
        int[] open = [.. corners.Chunk(3).Where(t => t.Any(v => cube.Vertices[v].Y > 0)).SelectMany(t => t)];
        LayeredPart part = Cuts.Of(new Mesh(cube.Vertices.ToArray(), open));
        Assert.All(part.Sections, s => SharedMeshes.AssertNear(200, s.AreaMm2, 1e-9));
        Assert.All(part.Sections, s => Assert.Equal(1, s.ClosedGaps));
    }

    private static Mesh Box(double x, double y, double toX, double toY) => Solids.Block(new(x, y, 0), new(toX, toY, 2));

    private static void Check(LayeredPart part, double area, double? outline, int islands)
    {
        Assert.All(part.Sections, s => SharedMeshes.AssertNear(area, s.AreaMm2, InRows));
        Assert.All(part.Sections, s => Assert.Equal(islands, s.Islands));
        if (outline is { } length) Assert.All(part.Sections, s => SharedMeshes.AssertNear(length, s.OutlineMm, 2e-3));
    }
}
