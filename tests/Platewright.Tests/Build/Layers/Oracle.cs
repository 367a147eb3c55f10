using NetTopologySuite.Geometries;
using NetTopologySuite.Geometries.Utilities;
using Platewright.Build.Layers;
using Platewright.Geometry;

namespace Platewright.Tests.Build.Layers;

/// <summary>Polygons of NetTopologySuite.</summary>
internal static class Oracle
{
    /// <summary>The region inside loops with material to the left: the sum of counter-clockwise ones less the
    /// others.</summary>
    public static NetTopologySuite.Geometries.Geometry Region(IEnumerable<Vec2[]> loops)
    {
        GeometryFactory factory = new();
        NetTopologySuite.Geometries.Geometry solid = factory.CreatePolygon(), holes = factory.CreatePolygon();
        foreach (Vec2[] loop in loops)
        {
            Coordinate[] ring = [.. loop.Append(loop[0]).Select(p => new Coordinate(p.X, p.Y))];
            NetTopologySuite.Geometries.Geometry polygon = GeometryFixer.Fix(factory.CreatePolygon(ring));
            if (Outline.SignedArea(loop) > 0) solid = solid.Union(polygon);
            else holes = holes.Union(polygon);
        }
        return solid.Difference(holes);
    }
}
