using Platewright.Geometry;

namespace Platewright.Fit.Planar;

/// <summary>A wall and the convex outline that must stay behind it, plus a fixed distance kept from it.</summary>
/// <param name="Keep">Added to the outline's reach, mm.</param>
internal readonly record struct TurnedWall(Vec2 Normal, double Offset, double Keep, IOutline Outline);

/// <summary>What the walls say at one angle: the value, and a sinusoid that the value is never below at any angle.</summary>
/// <param name="Value">σ: by how much the walls must move out.</param>
/// <param name="Offset">Where the shape goes when they have, mm.</param>
internal readonly record struct TurnSample(double Angle, double Value, double Constant, double Cos, double Sin, Vec2 Offset)
{
    public double BoundAt(double angle) => Constant + Cos * Math.Cos(angle) + Sin * Math.Sin(angle);
}

/// <summary>Outlines behind walls, as a function of the angle about the vertical.</summary>
internal sealed class TurnedWalls(TurnedWall[] walls, (int A, int B, int C) start)
{
    private readonly WallProgramme _programme = new();
    private readonly Wall[] _now = new Wall[walls.Length];
    private readonly Vec2[] _corners = new Vec2[walls.Length];

    public TurnSample At(double angle)
    {
        double cos = Math.Cos(angle), sin = Math.Sin(angle);
        for (int i = 0; i < walls.Length; i++)
        {
            ref readonly TurnedWall wall = ref walls[i];
            double dx = cos * wall.Normal.X + sin * wall.Normal.Y;
            double dy = cos * wall.Normal.Y - sin * wall.Normal.X;
            Vec2 corner = wall.Outline.Farthest(new Vec2(dx, dy));
            _corners[i] = corner;
            _now[i] = new Wall(wall.Normal, wall.Offset, corner.X * dx + corner.Y * dy + wall.Keep, i);
        }
        _programme.Start(_now[start.A], _now[start.B], _now[start.C]);
        _programme.Solve(_now);
        double constant = 0, a = 0, b = 0;
        for (int k = 0; k < 3; k++)
        {
            Wall wall = _programme.WallAt(k);
            double weight = _programme.WeightAt(k);
            Vec2 p = _corners[wall.Vertex];
            constant += weight * walls[wall.Vertex].Keep;
            a += weight * wall.Normal.Dot(p);
            b += weight * (wall.Normal.Y * p.X - wall.Normal.X * p.Y);
        }
        return new TurnSample(angle, _programme.Value, constant, a, b, _programme.Offset);
    }
}
