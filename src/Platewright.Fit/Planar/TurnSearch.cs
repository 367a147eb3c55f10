namespace Platewright.Fit.Planar;

/// <summary>
/// The best angle about the vertical. At each angle the binding walls give a sinusoid that the value never falls below, and
/// which it equals there; between two angles the value is at least the larger of their two sinusoids, whose least point is
/// an end or their crossing. Only finitely many sinusoids exist, so the search ends with the exact optimum.
/// </summary>
internal sealed class TurnSearch(TurnedWalls walls)
{
    private const int Octants = 8;
    private const int MostSamples = 4000;

    // Intervals are given up when they cannot improve on the best value by more than this, relative.
    private const double Worthwhile = 1e-13;

    /// <summary>The sample of least value.</summary>
    /// <param name="halfTurnIsEnough">The walls are symmetric under a half turn.</param>
    /// <param name="worthless">Values from here on are of no interest: the search gives up early where none is below.</param>
    public TurnSample Best(bool halfTurnIsEnough, double worthless = double.PositiveInfinity)
    {
        int count = halfTurnIsEnough ? Octants / 2 : Octants;
        var stack = new Stack<(TurnSample Left, TurnSample Right)>();
        TurnSample first = walls.At(0), best = first, left = first;
        for (int i = 1; i <= count; i++)
        {
            TurnSample right = walls.At(i * 2 * Math.PI / Octants);
            if (right.Value < best.Value) best = right;
            stack.Push((left, right));
            left = right;
        }
        for (int n = 0; n < MostSamples && stack.TryPop(out (TurnSample Left, TurnSample Right) gap); n++)
        {
            if (Crossing(gap.Left, gap.Right) is not { } angle) continue;
            if (Math.Max(gap.Left.BoundAt(angle), gap.Right.BoundAt(angle)) >= Math.Min(best.Value, worthless) * (1 - Worthwhile)) continue;
            TurnSample middle = walls.At(angle);
            if (middle.Value < best.Value) best = middle;
            stack.Push((gap.Left, middle));
            stack.Push((middle, gap.Right));
        }
        return best;
    }

    // Where the two sinusoids cross strictly between the angles; null where one stays above the other.
    private static double? Crossing(in TurnSample left, in TurnSample right)
    {
        double c = right.Constant - left.Constant, a = left.Cos - right.Cos, b = left.Sin - right.Sin;
        double size = Math.Sqrt(a * a + b * b);
        if (size <= Worthwhile * (Math.Abs(left.Value) + Math.Abs(right.Value)) || Math.Abs(c) > size) return null;
        double phase = Math.Atan2(b, a), spread = Math.Acos(c / size);
        double length = right.Angle - left.Angle;
        foreach (double candidate in (ReadOnlySpan<double>)[phase + spread, phase - spread])
        {
            double from = candidate - left.Angle;
            from -= 2 * Math.PI * Math.Floor(from / (2 * Math.PI));
            if (from > 1e-12 * length && from < length * (1 - 1e-12)) return left.Angle + from;
        }
        return null;
    }
}
