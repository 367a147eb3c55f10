using System.Globalization;
using Platewright.Geometry;

namespace Platewright.Demo.Writing;

/// <summary>Coordinates as text, with at most four decimals.</summary>
internal static class Numbers
{
    // Adding 0 turns a negative zero into a plain one.
    public static string Of(double x) => (Math.Round(x, 4) + 0.0).ToString("0.####", CultureInfo.InvariantCulture);

    public static string Of(Vec3 p) => $"{Of(p.X)} {Of(p.Y)} {Of(p.Z)}";
}
