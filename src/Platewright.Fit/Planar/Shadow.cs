using Platewright.Geometry;

namespace Platewright.Fit.Planar;

/// <summary>
/// A part standing in one way on the build surface, at any angle about the vertical: the outline of its shadow, the
/// outline of what touches the surface, and its height. All for the part as drawn (scale 1).
/// </summary>
internal sealed class Shadow
{
    private Shadow(Rotation standing, Vec2[] outline, Vec2[] contact, double heightMm, double areaMm2)
    {
        Standing = standing;
        Outline = outline;
        Contact = contact;
        HeightMm = heightMm;
        AreaMm2 = areaMm2;
    }

    /// <summary>The rotation that brings the part into this stand.</summary>
    public Rotation Standing { get; }

    /// <summary>Corners of the shadow, convex, counter-clockwise, mm.</summary>
    public Vec2[] Outline { get; }

    /// <summary>Corners of the convex outline of the contact with the surface, mm.</summary>
    public Vec2[] Contact { get; }

    public double HeightMm { get; }

    public double AreaMm2 { get; }

    /// <summary>What touches the surface, as if it were the whole part.</summary>
    public Shadow ContactOnly => new(Standing, Contact, Contact, HeightMm, ConvexPolygon.AreaMm2(Contact));

    public static Shadow Of(ReadOnlySpan<Vec3> vertices, Rotation standing)
    {
        Matrix3 r = standing.ToMatrix();
        double low = double.PositiveInfinity, high = double.NegativeInfinity;
        foreach (Vec3 v in vertices)
        {
            double z = r.Row2.Dot(v);
            low = Math.Min(low, z);
            high = Math.Max(high, z);
        }
        var all = new Vec2[vertices.Length];
        var touching = new List<Vec2>();
        for (int i = 0; i < vertices.Length; i++)
        {
            all[i] = new Vec2(r.Row0.Dot(vertices[i]), r.Row1.Dot(vertices[i]));
            if (r.Row2.Dot(vertices[i]) <= low + Tolerances.ContactBandMm) touching.Add(all[i]);
        }
        Vec2[] outline = ConvexPolygon.Of(all);
        return new Shadow(standing, outline, ConvexPolygon.Of([.. touching]), high - low, ConvexPolygon.AreaMm2(outline));
    }
}
