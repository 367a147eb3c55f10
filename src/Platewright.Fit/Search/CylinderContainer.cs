using Platewright.Fit.Planar;
using Platewright.Geometry;

namespace Platewright.Fit.Search;

/// <summary>An upright cylinder: two planes, and a wall in every direction around the part's shadow.</summary>
internal sealed class CylinderContainer(double radius, double height) : Container
{
    private readonly WallProgramme _programme = new();

    public override RotationDomain Domain => RotationDomain.Tilts;

    public override double LeastWidth => Math.Min(height, 2 * radius);

    public override int Touch(SupportGrid part, in Matrix3 rotation, Span<Contact> contacts)
    {
        contacts[0] = Slab(part, rotation, Vec3.UnitZ, height);
        Matrix3 r = rotation;
        RoundWall round = new(radius);
        _programme.Start(WallAlong(RoundWall.First), WallAlong(RoundWall.Second), WallAlong(RoundWall.Third));
        for (int step = 0; step < RoundWall.MostSteps; step++)
        {
            // The vertex farthest from where the centre is now, and the wall it pushes against.
            Vec2 center = -_programme.Offset;
            int vertex = FarthestFrom(part.Vertices, r, center, out Vec2 direction);
            Wall wall = round.At(direction, center, vertex);
            if (_programme.Excess(wall) <= RoundWall.Closed * radius * _programme.Value || !_programme.Enter(wall)) break;
        }
        contacts[1] = ShadowContact(_programme);
        return 2;

        Wall WallAlong(Vec2 n)
        {
            Vec3 u = r.Row0 * n.X + r.Row1 * n.Y;
            int vertex = part.Farthest(u);
            return new Wall(n, radius, part.Vertices[vertex].Dot(u), vertex);
        }
    }

    public override double Support(Vec3 normal) =>
        radius * Math.Sqrt(normal.X * normal.X + normal.Y * normal.Y) + Math.Abs(normal.Z) * height / 2;

    private static int FarthestFrom(ReadOnlySpan<Vec3> vertices, in Matrix3 rotation, Vec2 center, out Vec2 direction)
    {
        Vec3 ex = rotation.Row0, ey = rotation.Row1;
        int best = 0;
        double most = -1;
        direction = default;
        for (int i = 0; i < vertices.Length; i++)
        {
            double dx = vertices[i].Dot(ex) - center.X;
            double dy = vertices[i].Dot(ey) - center.Y;
            double d = dx * dx + dy * dy;
            if (d <= most) continue;
            most = d;
            best = i;
            direction = new Vec2(dx, dy);
        }
        return best;
    }
}
