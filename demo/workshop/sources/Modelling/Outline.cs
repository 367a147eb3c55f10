using NetTopologySuite.Geometries;
using NetTopologySuite.Geometries.Utilities;
using NetTopologySuite.Operation.Buffer;
using NetTopologySuite.Simplify;
using Platewright.Geometry;
using Region = NetTopologySuite.Geometries.Geometry;

namespace Platewright.Demo.Modelling;

/// <summary>Regions of a plane to model with, mm. Arcs are polygons that stray by at most a few hundredths.</summary>
public static class Outline
{
    /// <summary>How far a chord may stray from its arc, mm: below a tenth of a bead.</summary>
    private const double ChordErrorMm = 0.08;

    private const double CollinearMm = 0.002;

    private const double SpeckMm = 0.03;

    private static readonly GeometryFactory Factory = new(new PrecisionModel(10_000));

    /// <summary>Sides of the polygon that stands for a circle: a multiple of four, at least sixteen.</summary>
    public static int Sides(double radius) =>
        Math.Max(16, 4 * (int)Math.Ceiling(Math.PI / Math.Acos(1 - ChordErrorMm / Math.Max(radius, 1)) / 4));

    /// <summary>Points on a circle, counter-clockwise.</summary>
    public static Vec2[] Ring(double radius, Vec2 center = default, int sides = 0)
    {
        int n = sides > 0 ? sides : Sides(radius);
        return [.. Enumerable.Range(0, n).Select(i => center + Polar(radius, Math.Tau * i / n))];
    }

    public static Vec2 Polar(double radius, double angle) => new(radius * Math.Cos(angle), radius * Math.Sin(angle));

    public static Region Circle(double radius, double x = 0, double y = 0, int sides = 0) =>
        Of(Ring(radius, new Vec2(x, y), sides));

    public static Region Of(params Vec2[] points) =>
        Fixed(Factory.CreatePolygon(Rings.ToLinearRing(points).Coordinates));

    public static Region Rectangle(double x0, double y0, double x1, double y1, double radius = 0)
    {
        Region sharp = Of(new(x0, y0), new(x1, y0), new(x1, y1), new(x0, y1));
        return radius > 0 ? Buffered(Buffered(sharp, -radius, mitre: true), radius) : sharp;
    }

    /// <summary>A rectangle around a point.</summary>
    public static Region Centred(double width, double depth, double radius = 0, double x = 0, double y = 0) =>
        Rectangle(x - width / 2, y - depth / 2, x + width / 2, y + depth / 2, radius);

    /// <summary>A slot from one point to another, with round ends.</summary>
    public static Region Slot(Vec2 from, Vec2 to, double width) => Stroke(width, from, to);

    /// <summary>A band of this width along a line, with round ends and joints.</summary>
    public static Region Stroke(double width, params Vec2[] line) =>
        Buffered(Factory.CreateLineString([.. line.Select(p => new Coordinate(p.X, p.Y))]), width / 2);

    /// <summary>Points along an arc around a centre, both ends included; angles in degrees.</summary>
    public static Vec2[] Arc(Vec2 center, double radius, double fromDegrees, double toDegrees, int steps = 0)
    {
        int n = steps > 0 ? steps : Math.Max(2,
            (int)Math.Ceiling(Sides(radius) * Math.Abs(toDegrees - fromDegrees) / 360));
        return [.. Enumerable.Range(0, n + 1).Select(i =>
            center + Polar(radius, double.DegreesToRadians(fromDegrees + (toDegrees - fromDegrees) * i / n)))];
    }

    public static Region Plus(this Region a, params Region[] others) =>
        others.Aggregate(a, (sum, b) => Fixed(sum.Union(b)));

    public static Region Minus(this Region a, params Region[] others) =>
        others.Aggregate(a, (rest, b) => Fixed(rest.Difference(b)));

    public static Region And(this Region a, Region b) => Fixed(a.Intersection(b));

    public static Region Moved(this Region a, double x, double y, double degrees = 0)
    {
        var turn = AffineTransformation.RotationInstance(double.DegreesToRadians(degrees));
        return Fixed(turn.Translate(x, y).Transform(a));
    }

    /// <summary>Copies at equal angles round the origin.</summary>
    public static Region Around(this Region a, int count) =>
        a.Plus([.. Enumerable.Range(1, count - 1).Select(i => a.Moved(0, 0, 360.0 * i / count))]);

    /// <summary>Copies in a row along x, its middle at the origin.</summary>
    public static Region Row(this Region a, int count, double pitch) =>
        Factory.BuildGeometry([.. Enumerable.Range(0, count).Select(i => a.Moved((i - (count - 1) / 2.0) * pitch, 0))]);

    /// <summary>Grown by a distance with round corners, or shrunk where it is negative.</summary>
    public static Region Grown(this Region a, double distance) => Buffered(a, distance, mitre: distance < 0);

    /// <summary>Rounds the corners that stick out and those that go in.</summary>
    public static Region Rounded(this Region a, double outer, double inner = 0)
    {
        Region r = a;
        if (outer > 0) r = Buffered(Buffered(r, -outer, mitre: true), outer);
        if (inner > 0) r = Buffered(Buffered(r, inner, mitre: true), -inner);
        return Factory.BuildGeometry([.. Enumerable.Range(0, r.NumGeometries)
            .Select(i => WithoutSpecks((Polygon)r.GetGeometryN(i)))]);
    }

    /// <summary>Where two roundings meet they leave sides too short to chamfer; those are taken out.</summary>
    private static Polygon WithoutSpecks(Polygon polygon) => Factory.CreatePolygon(
        WithoutSpecks(polygon.Shell), [.. polygon.Holes.Select(WithoutSpecks)]);

    private static LinearRing WithoutSpecks(LinearRing ring)
    {
        List<Coordinate> kept = [];
        foreach (Coordinate c in ring.Coordinates.Skip(1))
            if (kept.Count == 0 || kept[^1].Distance(c) > SpeckMm) kept.Add(c);
        if (kept[0].Distance(kept[^1]) <= SpeckMm) kept.RemoveAt(kept.Count - 1);
        return Factory.CreateLinearRing([.. kept, kept[0]]);
    }

    private static Region Buffered(Region a, double distance, bool mitre = false)
    {
        BufferParameters how = mitre
            ? new(1, EndCapStyle.Flat, JoinStyle.Mitre, 20)
            : new(Math.Max(4, Sides(Math.Abs(distance)) / 4), EndCapStyle.Round, JoinStyle.Round, 5);
        return Fixed(new BufferOp(a, how).GetResultGeometry(distance));
    }

    private static Region Fixed(Region a) =>
        TopologyPreservingSimplifier.Simplify(NetTopologySuite.Precision.GeometryPrecisionReducer.Reduce(a,
            Factory.PrecisionModel), CollinearMm);
}
