using Platewright.Geometry;

namespace Platewright.Fit.Search;

/// <summary>The least eigenvalue of the symmetric part of a 3 × 3 matrix.</summary>
internal static class SymmetricEigen
{
    /// <summary>Trigonometric solution of the characteristic cubic (Smith, Comm. ACM 4 (1961) 168; from memory).</summary>
    public static double Least(in Matrix3 m)
    {
        double a = m.Row0.X, b = m.Row1.Y, c = m.Row2.Z;
        double d = (m.Row0.Y + m.Row1.X) / 2, e = (m.Row0.Z + m.Row2.X) / 2, f = (m.Row1.Z + m.Row2.Y) / 2;
        double off = d * d + e * e + f * f;
        double mean = (a + b + c) / 3;
        double spread = (a - mean) * (a - mean) + (b - mean) * (b - mean) + (c - mean) * (c - mean) + 2 * off;
        double p = Math.Sqrt(spread / 6);
        if (p == 0) return mean;
        double a0 = (a - mean) / p, b0 = (b - mean) / p, c0 = (c - mean) / p;
        double d0 = d / p, e0 = e / p, f0 = f / p;
        double half = (a0 * (b0 * c0 - f0 * f0) - d0 * (d0 * c0 - f0 * e0) + e0 * (d0 * f0 - b0 * e0)) / 2;
        double phi = Math.Acos(Math.Clamp(half, -1, 1)) / 3;
        return mean + 2 * p * Math.Cos(phi + 2 * Math.PI / 3) - 1e-14 * (Math.Abs(mean) + p);
    }
}
