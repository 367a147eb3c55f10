using Platewright.Fit.Search;
using Platewright.Geometry;

namespace Platewright.Fit.Planar;

/// <summary>
/// A part standing in one way on the build surface, at any angle about the vertical: its shadow, the outline of what
/// touches the surface, and its height. All for the part as drawn (scale 1).
/// </summary>
internal sealed class Shadow
{
    private readonly SupportGrid _part;
    private readonly Matrix3 _rows;
    private readonly double _lowest;
    private Vec2[]? _contact;

    /// <param name="standing">The rotation that brings the part into this stand.</param>
    public Shadow(SupportGrid part, Rotation standing)
    {
        _part = part;
        Standing = standing;
        _rows = standing.ToMatrix();
        ReadOnlySpan<Vec3> vertices = part.Vertices;
        _lowest = vertices[part.Farthest(-_rows.Row2)].Dot(_rows.Row2);
        HeightMm = vertices[part.Farthest(_rows.Row2)].Dot(_rows.Row2) - _lowest;
    }

    public Rotation Standing { get; }

    public double HeightMm { get; }

    /// <summary>Corners of the convex outline of the contact with the surface, mm.</summary>
    public Vec2[] Contact => _contact ??= FindContact();

    /// <summary>The shadow of every vertex, mm.</summary>
    public Vec2[] Points()
    {
        ReadOnlySpan<Vec3> vertices = _part.Vertices;
        var points = new Vec2[vertices.Length];
        for (int i = 0; i < points.Length; i++) points[i] = Flat(vertices[i]);
        return points;
    }

    /// <summary>The whole shadow, times a factor.</summary>
    public IOutline Body(double factor) => new Outline(this, factor);

    private Vec2 Flat(Vec3 v) => new(_rows.Row0.Dot(v), _rows.Row1.Dot(v));

    private Vec2[] FindContact()
    {
        var touching = new List<Vec2>();
        foreach (Vec3 v in _part.Vertices)
            if (_rows.Row2.Dot(v) <= _lowest + Tolerances.ContactBandMm) touching.Add(Flat(v));
        return ConvexPolygon.Of(touching.ToArray());
    }

    private sealed class Outline(Shadow shadow, double factor) : IOutline
    {
        public Vec2 Farthest(Vec2 direction)
        {
            Vec3 u = shadow._rows.Row0 * direction.X + shadow._rows.Row1 * direction.Y;
            return shadow.Flat(shadow._part.Vertices[shadow._part.Farthest(u)]) * factor;
        }
    }
}
