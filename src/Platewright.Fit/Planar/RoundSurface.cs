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
        if (brimMm >= radiusMm) return default;
        Vec2 center = EnclosingCircle.Of(shadow.Outline).Center;
        double scale = ScaleFrom(center);
        if (brimMm > 0 && InnerScale(center) < scale) (center, scale) = Compromise();
        Vec3 turned = Rotation.About(Vec3.UnitZ, angle).Apply(new Vec3(center.X, center.Y, 0));
        return new Laying(scale, angle, new Vec2(-turned.X, -turned.Y) * scale);

        double ScaleFrom(Vec2 at) => Math.Min(radiusMm / Reach(shadow.Outline, at), brimMm > 0 ? InnerScale(at) : double.PositiveInfinity);

        double InnerScale(Vec2 at) => (radiusMm - brimMm) / Reach(shadow.Contact, at);

        // Body and brim both push: walls enter where they push hardest, and the best centre seen counts.
        (Vec2 Center, double Scale) Compromise()
        {
            var outer = new RoundWall(radiusMm);
            var inner = new RoundWall(radiusMm - brimMm);
            (Vec2 Center, double Scale) best = (center, scale);
            _programme.Start(
                Toward(RoundWall.First, shadow.Outline), Toward(RoundWall.Second, shadow.Outline), Toward(RoundWall.Third, shadow.Outline));
            for (int step = 0; step < RoundWall.MostSteps; step++)
            {
                Vec2 now = -_programme.Offset;
                double reached = ScaleFrom(now);
                if (reached > best.Scale) best = (now, reached);
                Wall wall = Farthest(outer, shadow.Outline, now), brim = Farthest(inner, shadow.Contact, now);
                if (_programme.Excess(brim) > _programme.Excess(wall)) wall = brim;
                if (_programme.Excess(wall) <= RoundWall.Closed * radiusMm * _programme.Value || !_programme.Enter(wall)) break;
            }
            return best;
        }

        Wall Toward(Vec2 n, Vec2[] corners) => new(n, radiusMm, corners.Max(p => p.Dot(n)), 0);
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
