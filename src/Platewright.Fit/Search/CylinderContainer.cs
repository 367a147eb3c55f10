using Platewright.Fit.Planar;
using Platewright.Geometry;

namespace Platewright.Fit.Search;

/// <summary>An upright cylinder: two planes, and the circle around the part's shadow.</summary>
internal sealed class CylinderContainer(double radius, double height) : Container
{
    private Vec2[] _shadow = [];
    private int[]? _near;

    public override RotationDomain Domain => RotationDomain.Tilts;

    public override double LeastWidth => Math.Min(height, 2 * radius);

    public override Vec3 LeastWidthNormal => height <= 2 * radius ? Vec3.UnitZ : Vec3.UnitX;

    public override int Touch(SupportGrid part, in Matrix3 rotation, Span<Contact> contacts)
    {
        contacts[0] = Slab(part, rotation, Vec3.UnitZ, height);
        contacts[1] = Held(CircleAt(part, rotation));
        return 2;
    }

    public override int[]? Narrow(SupportGrid part, in Matrix3 rotation, double angle, int[]? among)
    {
        _near = among;
        if (angle >= Math.PI / 2) return _near;
        EnclosingCircle circle = CircleAt(part, rotation);
        // A turn by the angle moves a vertex and the circle by no more than this: only those near the rim can reach it.
        double rim = circle.RadiusMm - 2 * angle * part.Radius;
        var near = new List<int>();
        for (int i = 0; i < _shadow.Length; i++)
            if ((_shadow[i] - circle.Center).Length >= rim) near.Add(among?[i] ?? i);
        return _near = [.. near];
    }

    public override void Widen() => _near = null;

    private EnclosingCircle CircleAt(SupportGrid part, in Matrix3 rotation)
    {
        ReadOnlySpan<Vec3> vertices = part.Vertices;
        int count = _near?.Length ?? vertices.Length;
        if (_shadow.Length != count) _shadow = new Vec2[count];
        for (int i = 0; i < count; i++)
        {
            Vec3 v = vertices[_near?[i] ?? i];
            _shadow[i] = new Vec2(rotation.Row0.Dot(v), rotation.Row1.Dot(v));
        }
        EnclosingCircle circle = EnclosingCircle.Of(_shadow);
        return _near is null ? circle : circle with { A = _near[circle.A], B = _near[circle.B], C = _near[circle.C] };
    }

    // Normals λ (p − centre), made to cancel exactly, over what the circle allows them together.
    private Contact Held(in EnclosingCircle circle)
    {
        (double la, double lb, double lc) = circle.Weights();
        if (lc == 0) return Pair(circle.A, circle.PointA, circle.B, circle.PointB);
        if (lb == 0) return Pair(circle.A, circle.PointA, circle.C, circle.PointC);
        if (la == 0) return Pair(circle.B, circle.PointB, circle.C, circle.PointC);
        Vec2 na = (circle.PointA - circle.Center) * la, nb = (circle.PointB - circle.Center) * lb;
        Vec2 nc = -(na + nb);
        double scale = 1 / (radius * (na.Length + nb.Length + nc.Length));
        return new Contact(
            circle.A, new Vec3(na.X, na.Y, 0) * scale, circle.B, new Vec3(nb.X, nb.Y, 0) * scale,
            circle.C, new Vec3(nc.X, nc.Y, 0) * scale);
    }

    private Contact Pair(int a, Vec2 p, int b, Vec2 q)
    {
        double length = (q - p).Length;
        if (length == 0) return new Contact(a, default, a, default, a, default);
        Vec2 n = (q - p) / (length * 2 * radius);
        Vec3 n3 = new(n.X, n.Y, 0);
        return new Contact(a, -n3, b, n3, a, default);
    }
}
