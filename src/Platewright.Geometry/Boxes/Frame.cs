namespace Platewright.Geometry;

/// <summary>Directions to look along.</summary>
internal static class Frame
{
    /// <summary>Two unit vectors that make a right-handed frame with <paramref name="up"/> (a unit vector) as the
    /// third.</summary>
    public static (Vec3 X, Vec3 Y) Across(Vec3 up)
    {
        Vec3 side = Math.Abs(up.X) < 0.6 ? Vec3.UnitX : Vec3.UnitY;
        Vec3 x = (side - up * up.Dot(side)).Normalized();
        return (x, up.Cross(x));
    }

    /// <summary>Unit vectors spread evenly over the sphere along a golden-angle spiral.</summary>
    public static IEnumerable<Vec3> Spiral(int count)
    {
        double turn = Math.PI * (3 - Math.Sqrt(5));
        for (int i = 0; i < count; i++)
        {
            double z = 1 - (2 * i + 1) / (double)count;
            double r = Math.Sqrt(1 - z * z);
            yield return new Vec3(r * Math.Cos(turn * i), r * Math.Sin(turn * i), z);
        }
    }
}
