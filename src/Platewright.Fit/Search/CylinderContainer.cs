using Platewright.Fit.Planar;
using Platewright.Geometry;

namespace Platewright.Fit.Search;

/// <summary>An upright cylinder: two planes, and the circle around the part's shadow.</summary>
internal sealed class CylinderContainer(double radius, double height) : Container
{
    private Vec2[] _shadow = [];

    public override RotationDomain Domain => RotationDomain.Tilts;

    public override double LeastWidth => Math.Min(height, 2 * radius);

    public override Vec3 LeastWidthNormal => height <= 2 * radius ? Vec3.UnitZ : Vec3.UnitX;

    public override int Touch(SupportGrid part, in Matrix3 rotation, Span<Contact> contacts)
    {
        contacts[0] = Slab(part, rotation, Vec3.UnitZ, height);
        ReadOnlySpan<Vec3> vertices = part.Vertices;
        if (_shadow.Length != vertices.Length) _shadow = new Vec2[vertices.Length];
        for (int i = 0; i < vertices.Length; i++)
            _shadow[i] = new Vec2(rotation.Row0.Dot(vertices[i]), rotation.Row1.Dot(vertices[i]));
        contacts[1] = Held(EnclosingCircle.Of(_shadow));
        return 2;
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
