using Platewright.Geometry;

namespace Platewright.Fit.Planar;

/// <summary>A surface bounded by straight walls: a convex polygon.</summary>
internal sealed class PolygonSurface : Surface
{
    private readonly Vec2[] _normals;
    private readonly double[] _offsets;
    private readonly (int A, int B, int C) _start;
    private readonly bool _pointSymmetric;
    private readonly double _inradius;

    /// <param name="polygon">Convex, counter-clockwise, mm.</param>
    public PolygonSurface(ReadOnlySpan<Vec2> polygon)
    {
        (_normals, _offsets) = PolygonWalls.Of(polygon);
        _start = PolygonWalls.HoldingTriple(_normals, _offsets);
        _pointSymmetric = PolygonSymmetry.IsPointSymmetric(polygon);
        (Middle, _inradius) = PolygonWalls.Incircle(_normals, _offsets, _start);
    }

    public override IReadOnlyList<(Vec2 Normal, double Offset)> Walls => [.. _normals.Zip(_offsets)];

    /// <summary>Centre of the largest circle inside, mm.</summary>
    public Vec2 Middle { get; }

    /// <summary>The rectangle of this size whose lowest corner is <paramref name="corner"/>.</summary>
    public static PolygonSurface Rectangle(Vec2 corner, double widthMm, double depthMm) => new(
        [corner, corner + new Vec2(widthMm, 0), corner + new Vec2(widthMm, depthMm), corner + new Vec2(0, depthMm)]);

    public override Laying LayTurned(Shadow shadow, double brimMm, double above) =>
        brimMm >= _inradius ? default : Scaled(new TurnSearch(Programme(shadow, brimMm)).Best(_pointSymmetric, 1 / above));

    public override Laying LayAt(Shadow shadow, double angle, double brimMm) =>
        brimMm >= _inradius ? default : Scaled(Programme(shadow, brimMm).At(angle));

    public override double ClearanceMm(Shadow shadow, double angle, double size, double brimMm)
    {
        int count = _normals.Length;
        var walls = new TurnedWall[brimMm > 0 ? 2 * count : count];
        IOutline body = shadow.Body(size), contact = new CornerOutline(shadow.Contact, size);
        for (int i = 0; i < walls.Length; i++)
        {
            bool brim = i >= count;
            // Every wall moves out by the same distance: offset 1, and the reach beyond where the wall is now.
            double keep = (brim ? brimMm : 0) - _offsets[i % count];
            walls[i] = new TurnedWall(_normals[i % count], 1, keep, brim ? contact : body);
        }
        return -2 * new TurnedWalls(walls, _start).At(angle).Value;
    }

    private TurnedWalls Programme(Shadow shadow, double brimMm)
    {
        int count = _normals.Length;
        var walls = new List<TurnedWall>(2 * count);
        IOutline body = shadow.Body(1);
        for (int i = 0; i < count; i++) walls.Add(new TurnedWall(_normals[i], _offsets[i], 0, body));
        if (brimMm > 0)
        {
            var contact = new CornerOutline(shadow.Contact, 1);
            for (int i = 0; i < count; i++) walls.Add(new TurnedWall(_normals[i], _offsets[i] - brimMm, 0, contact));
        }
        return new TurnedWalls([.. walls], _start);
    }

    private static Laying Scaled(TurnSample best) =>
        new(1 / best.Value, best.Angle, best.Offset / best.Value);
}
