namespace Platewright.Geometry;

/// <summary>Main axes of a symmetric 3 × 3 matrix (Jacobi's rotations).</summary>
internal static class SymmetricMatrix
{
    private const int MostSweeps = 30;

    /// <summary>The matrix of second moments given as xx, xy, xz, yy, yz, zz.</summary>
    public static Matrix3 From(IReadOnlyList<double> m) =>
        new(new(m[0], m[1], m[2]), new(m[1], m[3], m[4]), new(m[2], m[4], m[5]));

    /// <summary>Eigenvalues, largest first.</summary>
    public static Vec3 Eigenvalues(Matrix3 symmetric) => Axes(symmetric).Values;

    /// <summary>Eigenvalues, largest first, and their unit vectors as rows of a rotation.</summary>
    public static (Vec3 Values, Matrix3 Axes) Axes(Matrix3 symmetric)
    {
        double[,] a =
        {
            { symmetric.Row0.X, symmetric.Row0.Y, symmetric.Row0.Z },
            { symmetric.Row1.X, symmetric.Row1.Y, symmetric.Row1.Z },
            { symmetric.Row2.X, symmetric.Row2.Y, symmetric.Row2.Z },
        };
        double[,] v = { { 1, 0, 0 }, { 0, 1, 0 }, { 0, 0, 1 } };
        for (int sweep = 0; sweep < MostSweeps; sweep++)
        {
            if (a[0, 1] == 0 && a[0, 2] == 0 && a[1, 2] == 0) break;
            Turn(a, v, 0, 1);
            Turn(a, v, 0, 2);
            Turn(a, v, 1, 2);
        }
        int[] order = [0, 1, 2];
        Array.Sort(order, (i, j) => a[j, j].CompareTo(a[i, i]));
        Vec3 Column(int k) => new(v[0, k], v[1, k], v[2, k]);
        Vec3 first = Column(order[0]), second = Column(order[1]);
        return (new Vec3(a[order[0], order[0]], a[order[1], order[1]], a[order[2], order[2]]),
            new Matrix3(first, second, first.Cross(second)));
    }

    private static void Turn(double[,] a, double[,] v, int p, int q)
    {
        if (a[p, q] == 0) return;
        double theta = (a[q, q] - a[p, p]) / (2 * a[p, q]);
        double t = Math.CopySign(1, theta) / (Math.Abs(theta) + Math.Sqrt(theta * theta + 1));
        double c = 1 / Math.Sqrt(t * t + 1), s = t * c;
        for (int k = 0; k < 3; k++) (a[k, p], a[k, q]) = (c * a[k, p] - s * a[k, q], s * a[k, p] + c * a[k, q]);
        for (int k = 0; k < 3; k++) (a[p, k], a[q, k]) = (c * a[p, k] - s * a[q, k], s * a[p, k] + c * a[q, k]);
        for (int k = 0; k < 3; k++) (v[k, p], v[k, q]) = (c * v[k, p] - s * v[k, q], s * v[k, p] + c * v[k, q]);
    }
}
