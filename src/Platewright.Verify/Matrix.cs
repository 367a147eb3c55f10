namespace Platewright.Verify;

/// <summary>A 3 × 3 matrix of intervals by rows, Σ n pᵀ.</summary>
internal readonly record struct Matrix(Point Row0, Point Row1, Point Row2)
{
    public static readonly Matrix Zero = new(new Point(0, 0, 0), new Point(0, 0, 0), new Point(0, 0, 0));

    public Interval Trace => Row0.X + Row1.Y + Row2.Z;

    /// <summary>Length of the axial vector: the gradient of the trace under small rotations.</summary>
    public Interval AxialLength
    {
        get
        {
            Interval x = Row2.Y - Row1.Z, y = Row0.Z - Row2.X, z = Row1.X - Row0.Y;
            return Interval.Sqrt(Interval.Abs(x) * Interval.Abs(x) + Interval.Abs(y) * Interval.Abs(y) + Interval.Abs(z) * Interval.Abs(z));
        }
    }

    public Matrix Plus(Point n, Point p) => new(Row0 + n.X * p, Row1 + n.Y * p, Row2 + n.Z * p);

    public Matrix Plus(Matrix m, Interval factor) => new(Row0 + factor * m.Row0, Row1 + factor * m.Row1, Row2 + factor * m.Row2);

    /// <summary>
    /// A number that is certainly not above any eigenvalue of the symmetric part: guessed, then proved by Sylvester's
    /// criterion (all leading minors of S − x positive); the guess sinks until it is.
    /// </summary>
    /// <exception cref="ProofException">No guess could be proved.</exception>
    public double LeastEigenvalue()
    {
        Interval two = 2;
        Interval a = Row0.X, b = Row1.Y, c = Row2.Z;
        Interval d = (Row0.Y + Row1.X) / two, e = (Row0.Z + Row2.X) / two, f = (Row1.Z + Row2.Y) / two;
        double size = Size(a) + Size(b) + Size(c) + Size(d) + Size(e) + Size(f);
        double guess = Guess(a.Low, b.Low, c.Low, d.Low, e.Low, f.Low);
        for (double sink = 1e-14; sink < 10; sink *= 10)
        {
            double x = guess - sink * size;
            Interval p = a - x, q = b - x, r = c - x;
            Interval second = p * q - d * d;
            Interval third = r * second - f * (p * f - d * e) + e * (d * f - q * e);
            if (p.Low > 0 && second.Low > 0 && third.Low > 0) return x;
        }
        return size == 0 ? 0 : throw new ProofException("the least curvature of a cell could not be bounded");
    }

    private static double Size(Interval i) => Math.Max(Math.Abs(i.Low), Math.Abs(i.High));

    // Jacobi's rotations on plain numbers; only a guess, proved afterwards.
    private static double Guess(double a, double b, double c, double d, double e, double f)
    {
        double[,] m = { { a, d, e }, { d, b, f }, { e, f, c } };
        for (int sweep = 0; sweep < 12; sweep++)
            for (int p = 0; p < 2; p++)
                for (int q = p + 1; q < 3; q++)
                {
                    if (m[p, q] == 0) continue;
                    double angle = 0.5 * Math.Atan2(2 * m[p, q], m[q, q] - m[p, p]);
                    double cos = Math.Cos(angle), sin = Math.Sin(angle);
                    for (int k = 0; k < 3; k++) (m[k, p], m[k, q]) = (cos * m[k, p] - sin * m[k, q], sin * m[k, p] + cos * m[k, q]);
                    for (int k = 0; k < 3; k++) (m[p, k], m[q, k]) = (cos * m[p, k] - sin * m[q, k], sin * m[p, k] + cos * m[q, k]);
                }
        return Math.Min(m[0, 0], Math.Min(m[1, 1], m[2, 2]));
    }
}
