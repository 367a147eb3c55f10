using Platewright.Geometry;

namespace Platewright.Fit.Planar;

/// <summary>A round surface around the origin: turning changes nothing.</summary>
internal sealed class RoundSurface(double radiusMm) : Surface
{
    private readonly WallProgramme _programme = new();

    public override double AreaMm2 => Math.PI * radiusMm * radiusMm;

    public override IReadOnlyList<(Vec2 Normal, double Offset)> Walls => [];

    public double RadiusMm => radiusMm;

    public override Laying LayTurned(Shadow shadow, double brimMm) => LayAt(shadow, 0, brimMm);

    public override Laying LayAt(Shadow shadow, double angle, double brimMm)
    {
        Matrix3 turn = Rotation.About(Vec3.UnitZ, angle).ToMatrix();
        var outer = new RoundWall(radiusMm);
        var inner = new RoundWall(radiusMm - brimMm);
        if (inner.RadiusMm <= 0) return default;
        _programme.Start(
            Toward(RoundWall.First, shadow.Outline), Toward(RoundWall.Second, shadow.Outline), Toward(RoundWall.Third, shadow.Outline));
        for (int step = 0; step < RoundWall.MostSteps; step++)
        {
            Vec2 center = -_programme.Offset;
            Wall wall = Farthest(outer, shadow.Outline, center);
            if (brimMm > 0)
            {
                Wall brim = Farthest(inner, shadow.Contact, center);
                if (_programme.Excess(brim) > _programme.Excess(wall)) wall = brim;
            }
            if (_programme.Excess(wall) <= RoundWall.Closed * radiusMm * _programme.Value || !_programme.Enter(wall)) break;
        }
        // Rounding may leave the programme a hair short: the scale is what the farthest corners allow from its centre.
        Vec2 middle = -_programme.Offset;
        double scale = radiusMm / Reach(shadow.Outline, middle);
        if (brimMm > 0) scale = Math.Min(scale, inner.RadiusMm / Reach(shadow.Contact, middle));
        Vec2 turned = new(turn.Row0.X * middle.X + turn.Row0.Y * middle.Y, turn.Row1.X * middle.X + turn.Row1.Y * middle.Y);
        return new Laying(scale, angle, -turned * scale);

        Wall Toward(Vec2 n, Vec2[] corners)
        {
            double most = double.NegativeInfinity;
            foreach (Vec2 p in corners) most = Math.Max(most, p.Dot(n));
            return new Wall(n, radiusMm, most, 0);
        }
    }

    public override double ClearanceMm(Shadow shadow, double angle, double size, double brimMm)
    {
        // Radius needed: the smallest circle around the body and the contact grown by the brim, by scaling a round surface.
        double needed = size * radiusMm / LayAt(shadow, angle, 0).Scale;
        double left = 2 * (radiusMm - needed);
        if (brimMm <= 0) return left;
        double contact = size * radiusMm / LayAt(shadow.ContactOnly, angle, 0).Scale + brimMm;
        return Math.Min(left, 2 * (radiusMm - contact));
    }

    private static double Reach(Vec2[] corners, Vec2 center) => Math.Max(corners.Max(p => (p - center).Length), double.Epsilon);

    private static Wall Farthest(RoundWall round, Vec2[] corners, Vec2 center)
    {
        int best = 0;
        for (int i = 1; i < corners.Length; i++)
            if ((corners[i] - center).Length > (corners[best] - center).Length) best = i;
        return round.At(corners[best] - center, center, best);
    }
}
