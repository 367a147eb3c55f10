using Platewright.Geometry;

namespace Platewright.Fit.Planar;

/// <summary>A round surface around the origin: turning changes nothing.</summary>
internal sealed class RoundSurface(double radiusMm) : Surface
{
    private static readonly Vec2[] Compass =
        [.. Enumerable.Range(0, 16).Select(i => new Vec2(Math.Cos(i * Math.PI / 8), Math.Sin(i * Math.PI / 8)))];

    private readonly WallProgramme _programme = new();

    public override IReadOnlyList<(Vec2 Normal, double Offset)> Walls => [];

    public double RadiusMm => radiusMm;

    public override Laying LayTurned(Shadow shadow, double brimMm, double above)
    {
        // The circle around a few of the shadow's corners is no larger than the one around all.
        IOutline body = shadow.Body(1);
        double most = radiusMm / EnclosingCircle.Of(Array.ConvertAll(Compass, body.Farthest)).RadiusMm;
        if (most <= above) return new Laying(most / 2, 0, default);
        return LayAt(shadow, 0, brimMm);
    }

    public override Laying LayAt(Shadow shadow, double angle, double brimMm)
    {
        if (brimMm >= radiusMm) return default;
        Vec2[] body = shadow.Points();
        Vec2 center = EnclosingCircle.Of(body).Center;
        double scale = ScaleFrom(center);
        if (brimMm > 0 && InnerScale(center) < scale) (center, scale) = Compromise();
        Vec3 turned = Rotation.About(Vec3.UnitZ, angle).Apply(new Vec3(center.X, center.Y, 0));
        return new Laying(scale, angle, new Vec2(-turned.X, -turned.Y) * scale);

        double ScaleFrom(Vec2 at) => Math.Min(radiusMm / Reach(body, at), brimMm > 0 ? InnerScale(at) : double.PositiveInfinity);

        double InnerScale(Vec2 at) => (radiusMm - brimMm) / Reach(shadow.Contact, at);

        // Body and brim both push: walls enter where they push hardest, and the best centre seen counts.
        (Vec2 Center, double Scale) Compromise()
        {
            var outer = new RoundWall(radiusMm);
            var inner = new RoundWall(radiusMm - brimMm);
            (Vec2 Center, double Scale) best = (center, scale);
            _programme.Start(
                Toward(RoundWall.First, body), Toward(RoundWall.Second, body), Toward(RoundWall.Third, body));
            for (int step = 0; step < RoundWall.MostSteps; step++)
            {
                Vec2 now = -_programme.Offset;
                double reached = ScaleFrom(now);
                if (reached > best.Scale) best = (now, reached);
                Wall wall = Farthest(outer, body, now), brim = Farthest(inner, shadow.Contact, now);
                if (_programme.Excess(brim) > _programme.Excess(wall)) wall = brim;
                if (_programme.Excess(wall) <= RoundWall.Closed * radiusMm * _programme.Value || !_programme.Enter(wall)) break;
            }
            return best;
        }

        Wall Toward(Vec2 n, Vec2[] corners) => new(n, radiusMm, corners.Max(p => p.Dot(n)), 0);
    }

    public override double ClearanceMm(Shadow shadow, double angle, double size, double brimMm)
    {
        // Radius needed: the smallest circle around the body, and the one around the contact grown by the brim.
        double left = 2 * (radiusMm - size * EnclosingCircle.Of(shadow.Points()).RadiusMm);
        if (brimMm <= 0) return left;
        return Math.Min(left, 2 * (radiusMm - brimMm - size * EnclosingCircle.Of(shadow.Contact).RadiusMm));
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
