namespace Platewright.Sizing.Money;

/// <summary>From which amount of work on the one costs more than the other.</summary>
public static class BreakEven
{
    /// <summary>
    /// The least amount of work, greater than 0, at which the order of two costs changes; null where it never does up to
    /// <paramref name="most"/>. Between two amounts at which one more machine is needed both costs are straight lines, so that each such
    /// stretch has at most one crossing, and a jump may be one.
    /// </summary>
    /// <param name="a">One machine.</param>
    /// <param name="b">The other.</param>
    /// <param name="most">Greatest amount looked at, greater than 0.</param>
    public static double? Of(CostLine a, CostLine b, double most)
    {
        double[] jumps =
        [
            .. JumpsOf(a, most).Concat(JumpsOf(b, most)).Order().Distinct(), most,
        ];
        int order = Math.Sign(a.At(0) - b.At(0));
        double from = 0;
        foreach (double to in jumps)
        {
            // Up to and with the jump itself the counts of this stretch are enough.
            double atStart = Difference(a, b, from, to), atEnd = Difference(a, b, to, to);
            if (order == 0) order = Math.Sign(atStart);
            if (from > 0 && Math.Sign(atStart) == -order && order != 0) return from;
            if (order != 0 && Math.Sign(atEnd) == -order) return from + (to - from) * (atStart / (atStart - atEnd));
            if (order == 0) order = Math.Sign(atEnd);
            from = to;
        }
        return null;
    }

    // Difference at an amount with the numbers of machines that the end of its stretch needs.
    private static double Difference(CostLine a, CostLine b, double work, double end) =>
        a.CountAt(end) * a.OwningOne + work * a.Working - b.CountAt(end) * b.OwningOne - work * b.Working;

    private static IEnumerable<double> JumpsOf(CostLine line, double most)
    {
        for (int count = 1; count <= MostMachines && line.EnoughUpTo(count) < most; count++) yield return line.EnoughUpTo(count);
    }

    /// <summary>More of one kind nobody compares.</summary>
    private const int MostMachines = 1000;
}
