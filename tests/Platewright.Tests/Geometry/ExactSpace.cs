using System.Numerics;
using Platewright.Geometry;

namespace Platewright.Tests.Geometry;

/// <summary>Signs and containment in whole numbers, written apart from the code under test.</summary>
internal static class ExactSpace
{
    // Every finite double is a whole multiple of 2^-1074.
    private static BigInteger Whole(double x)
    {
        int shift = 0;
        // Doubling is exact as long as nothing overflows; 2^53 holds every bit before the point.
        for (; shift < 1074 && x != 0 && Math.Abs(x) < 1L << 53; shift++) x *= 2;
        return new BigInteger(x) << (1074 - shift);
    }

    public static (BigInteger X, BigInteger Y, BigInteger Z) Of(Vec3 p) => (Whole(p.X), Whole(p.Y), Whole(p.Z));

    /// <summary>Sign of ((b − a) × (c − a)) · (d − a).</summary>
    public static int Side(Vec3 a, Vec3 b, Vec3 c, Vec3 d) => Volume(Of(a), Of(b), Of(c), Of(d)).Sign;

    /// <summary>True where p is in the convex hull of the others: in one of their simplices (Carathéodory).</summary>
    public static bool InHull(Vec3 p, Vec3[] others)
    {
        var q = others.Select(Of).ToArray();
        var o = Of(p);
        for (int a = 0; a < q.Length; a++)
        {
            if (q[a] == o) return true;
            for (int b = a + 1; b < q.Length; b++)
            {
                if (InSegment(q[a], q[b], o)) return true;
                for (int c = b + 1; c < q.Length; c++)
                {
                    if (InTriangle(q[a], q[b], q[c], o)) return true;
                    for (int d = c + 1; d < q.Length; d++)
                        if (InTetrahedron(q[a], q[b], q[c], q[d], o)) return true;
                }
            }
        }
        return false;
    }

    private static bool InTetrahedron(
        (BigInteger X, BigInteger Y, BigInteger Z) a, (BigInteger X, BigInteger Y, BigInteger Z) b,
        (BigInteger X, BigInteger Y, BigInteger Z) c, (BigInteger X, BigInteger Y, BigInteger Z) d,
        (BigInteger X, BigInteger Y, BigInteger Z) p)
    {
        int whole = Volume(a, b, c, d).Sign;
        if (whole == 0) return false;
        return Volume(p, b, c, d).Sign * whole >= 0 && Volume(a, p, c, d).Sign * whole >= 0
            && Volume(a, b, p, d).Sign * whole >= 0 && Volume(a, b, c, p).Sign * whole >= 0;
    }

    private static bool InTriangle(
        (BigInteger X, BigInteger Y, BigInteger Z) a, (BigInteger X, BigInteger Y, BigInteger Z) b,
        (BigInteger X, BigInteger Y, BigInteger Z) c, (BigInteger X, BigInteger Y, BigInteger Z) p)
    {
        if (!Volume(a, b, c, p).IsZero) return false;
        var n = Cross(Minus(b, a), Minus(c, a));
        if (n == default) return false;
        return Dot(Cross(Minus(b, a), Minus(p, a)), n).Sign >= 0 && Dot(Cross(Minus(c, b), Minus(p, b)), n).Sign >= 0
            && Dot(Cross(Minus(a, c), Minus(p, c)), n).Sign >= 0;
    }

    private static bool InSegment(
        (BigInteger X, BigInteger Y, BigInteger Z) a, (BigInteger X, BigInteger Y, BigInteger Z) b,
        (BigInteger X, BigInteger Y, BigInteger Z) p) =>
        Cross(Minus(b, a), Minus(p, a)) == default && Dot(Minus(p, a), Minus(p, b)).Sign <= 0;

    private static BigInteger Volume(
        (BigInteger X, BigInteger Y, BigInteger Z) a, (BigInteger X, BigInteger Y, BigInteger Z) b,
        (BigInteger X, BigInteger Y, BigInteger Z) c, (BigInteger X, BigInteger Y, BigInteger Z) d) =>
        Dot(Cross(Minus(b, a), Minus(c, a)), Minus(d, a));

    private static (BigInteger X, BigInteger Y, BigInteger Z) Minus(
        (BigInteger X, BigInteger Y, BigInteger Z) a, (BigInteger X, BigInteger Y, BigInteger Z) b) =>
        (a.X - b.X, a.Y - b.Y, a.Z - b.Z);

    private static (BigInteger X, BigInteger Y, BigInteger Z) Cross(
        (BigInteger X, BigInteger Y, BigInteger Z) a, (BigInteger X, BigInteger Y, BigInteger Z) b) =>
        (a.Y * b.Z - a.Z * b.Y, a.Z * b.X - a.X * b.Z, a.X * b.Y - a.Y * b.X);

    private static BigInteger Dot(
        (BigInteger X, BigInteger Y, BigInteger Z) a, (BigInteger X, BigInteger Y, BigInteger Z) b) =>
        a.X * b.X + a.Y * b.Y + a.Z * b.Z;
}
