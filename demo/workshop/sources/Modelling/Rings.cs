using NetTopologySuite.Geometries;
using Platewright.Geometry;

namespace Platewright.Demo.Modelling;

/// <summary>
/// Closed rings of points in a plane: the first point is not repeated, the material lies on the left.
/// </summary>
public static class Rings
{
    /// <summary>The rings of every polygon in a region: outlines counter-clockwise, holes clockwise.</summary>
    public static List<Vec2[]> Of(NetTopologySuite.Geometries.Geometry region)
    {
        List<Vec2[]> rings = [];
        for (int i = 0; i < region.NumGeometries; i++)
        {
            var polygon = (Polygon)region.GetGeometryN(i);
            rings.Add(Read(polygon.ExteriorRing, counterClockwise: true));
            rings.AddRange(polygon.InteriorRings.Select(hole => Read(hole, counterClockwise: false)));
        }
        return rings;
    }

    /// <summary>The signed area of a ring, mm², positive when it runs counter-clockwise.</summary>
    public static double Area(ReadOnlySpan<Vec2> ring)
    {
        double sum = 0;
        for (int i = 0; i < ring.Length; i++) sum += ring[i].Cross(ring[(i + 1) % ring.Length]);
        return sum / 2;
    }

    /// <summary>
    /// The ring with every side moved into the material by <paramref name="distance"/>, mm (negative: outwards). Point
    /// stays with point, so that a chamfer is a plain wall.
    /// </summary>
    /// <exception cref="ArgumentException">The distance is more than an edge can give way.</exception>
    public static Vec2[] Inset(ReadOnlySpan<Vec2> ring, double distance)
    {
        var moved = new Vec2[ring.Length];
        for (int i = 0; i < ring.Length; i++)
        {
            Vec2 before = (ring[i] - ring[(i + ring.Length - 1) % ring.Length]).Normalized();
            Vec2 after = (ring[(i + 1) % ring.Length] - ring[i]).Normalized();
            Vec2 left = new(-before.Y - after.Y, before.X + after.X);
            moved[i] = ring[i] + left * (distance / (1 + before.Dot(after)));
        }
        for (int i = 0; i < ring.Length; i++)
        {
            int j = (i + 1) % ring.Length;
            if ((ring[j] - ring[i]).Dot(moved[j] - moved[i]) <= 0)
                throw new ArgumentException($"{distance} mm is too far for the feature at {ring[i]} - {ring[j]}.",
                    nameof(distance));
        }
        return moved;
    }

    /// <summary>Whether a point lies inside a ring of either direction.</summary>
    public static bool Holds(ReadOnlySpan<Vec2> ring, Vec2 p)
    {
        bool inside = false;
        for (int i = 0; i < ring.Length; i++)
        {
            Vec2 a = ring[i], b = ring[(i + 1) % ring.Length];
            if (a.Y > p.Y != b.Y > p.Y && p.X < a.X + (b.X - a.X) * (p.Y - a.Y) / (b.Y - a.Y)) inside = !inside;
        }
        return inside;
    }

    public static LinearRing ToLinearRing(IReadOnlyList<Vec2> ring)
    {
        var coordinates = new Coordinate[ring.Count + 1];
        for (int i = 0; i < coordinates.Length; i++) coordinates[i] =
            new Coordinate(ring[i % ring.Count].X, ring[i % ring.Count].Y);
        return new LinearRing(coordinates);
    }

    private static Vec2[] Read(LineString ring, bool counterClockwise)
    {
        Vec2[] points = [.. ring.Coordinates.Skip(1).Select(c => new Vec2(c.X, c.Y))];
        if (Area(points) > 0 != counterClockwise) Array.Reverse(points);
        return points;
    }
}
