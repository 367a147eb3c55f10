using Platewright.Fit.Planar;
using Platewright.Geometry;

namespace Platewright.Fit;

/// <summary>Puts one part into one build volume: the largest scale, and where it then lies.</summary>
/// <param name="brimMm">Brim around what touches the surface, mm.</param>
internal sealed class Placing(PreparedPart part, UsableVolume volume, double brimMm)
{
    /// <summary>Scales beyond this mean "as large as you like": a part without extent.</summary>
    public const double MostScale = 1e9;

    private readonly KeepOutPlacer? _keepOuts = volume.KeepOuts.Count > 0 ? new KeepOutPlacer(part, volume, brimMm) : null;

    /// <summary>True where boxes to stay out of make an answer "none found" instead of "none exists".</summary>
    public bool IsObstructed => _keepOuts is not null;

    /// <summary>Translation only.</summary>
    public WayOfFitting AsDrawn() => Lay(part.AsDrawn, volume.Surface.LayAt(part.AsDrawn, 0, brimMm), [0]);

    /// <summary>Any turn about the vertical, standing as drawn.</summary>
    public WayOfFitting Upright() => LayTurned(part.AsDrawn, 0);

    /// <summary>Resting on any face of the hull, at any turn.</summary>
    public WayOfFitting Turned()
    {
        WayOfFitting? best = null;
        foreach (Shadow stand in part.Stands)
        {
            // Lowest first: from the first stand too tall to improve, none does.
            double byHeight = volume.HeightMm / stand.HeightMm / part.Growth;
            if (best is not null && byHeight <= best.LargestScale) break;
            WayOfFitting way = LayTurned(stand, best?.LargestScale ?? 0);
            if (best is null || way.LargestScale > best.LargestScale) best = way;
        }
        return best ?? Upright();
    }

    /// <summary>Standing at a rotation, at any turn about the vertical.</summary>
    public WayOfFitting Standing(Rotation rotation) => LayTurned(new Shadow(part.Grid, rotation), 0);

    /// <summary>Exactly this rotation.</summary>
    public WayOfFitting At(Rotation rotation)
    {
        var shadow = new Shadow(part.Grid, rotation);
        return Lay(shadow, volume.Surface.LayAt(shadow, 0, brimMm), [0]);
    }

    /// <summary>The same way at a scale no larger than its own.</summary>
    public Pose PoseAt(WayOfFitting way, double scale)
    {
        double ratio = scale / way.LargestScale;
        if (way.LargestScale <= 0 || ratio >= 1) return way.Pose;
        if (_keepOuts is not null && _keepOuts.Find(way.Pose.Rotation, scale) is { } found) return found;
        Vec3 t = way.Pose.Translation;
        // Shrinks towards the middle of the surface, which keeps a convex body inside.
        Vec3 moved = new(
            t.X * ratio + volume.Middle.X * (1 - ratio), t.Y * ratio + volume.Middle.Y * (1 - ratio), t.Z * ratio);
        return new Pose(way.Pose.Scale * ratio, way.Pose.Rotation, moved);
    }

    /// <summary>What is left (negative: missing) at 100 % along the tightest direction, mm.</summary>
    public double ClearanceMm(WayOfFitting way)
    {
        var shadow = new Shadow(part.Grid, way.Pose.Rotation);
        return Math.Min(
            volume.HeightMm - shadow.HeightMm * part.Growth,
            volume.Surface.ClearanceMm(shadow, 0, part.Growth, brimMm));
    }

    private WayOfFitting LayTurned(Shadow shadow, double above)
    {
        Laying best = volume.Surface.LayTurned(shadow, brimMm, above * part.Growth);
        return Lay(shadow, best, _keepOuts is null ? [best.Angle] : KeepOutPlacer.AnglesFrom(best.Angle));
    }

    private WayOfFitting Lay(Shadow shadow, Laying laying, ReadOnlySpan<double> angles)
    {
        if (_keepOuts is not null) return LayAround(shadow, angles);
        double built = Math.Min(Math.Min(laying.Scale, volume.HeightMm / shadow.HeightMm), MostScale);
        Rotation rotation = (Rotation.About(Vec3.UnitZ, laying.Angle) * shadow.Standing).Normalized();
        if (built <= 0) return new WayOfFitting(0, new Pose(0, rotation, default));
        double ratio = double.IsFinite(laying.Scale) ? built / laying.Scale : 0;
        Vec2 offset = (double.IsFinite(laying.Scale) ? laying.Offset * ratio : default) + volume.Middle * (1 - ratio);
        return new WayOfFitting(built / part.Growth, Posed(rotation, built, offset));
    }

    private Pose Posed(Rotation rotation, double built, Vec2 offset) =>
        new(built, rotation, new Vec3(offset.X, offset.Y, -built * Lowest(rotation)));

    private double Lowest(Rotation rotation)
    {
        Vec3 down = -rotation.ToMatrix().Row2;
        return -part.Grid.Vertices[part.Grid.Farthest(down)].Dot(down);
    }

    private WayOfFitting LayAround(Shadow shadow, ReadOnlySpan<double> angles)
    {
        WayOfFitting best = new(0, new Pose(0, shadow.Standing, default));
        foreach (double angle in angles)
        {
            Laying free = volume.Surface.LayAt(shadow, angle, brimMm);
            double most = Math.Min(Math.Min(free.Scale, volume.HeightMm / shadow.HeightMm), MostScale) / part.Growth;
            if (most <= best.LargestScale) continue;
            Rotation rotation = (Rotation.About(Vec3.UnitZ, angle) * shadow.Standing).Normalized();
            if (_keepOuts!.Largest(rotation, most, best.LargestScale) is { } way) best = way;
        }
        return best;
    }
}
