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
        int order = Math.Sign(a.At(0) - b.At(0)), countA = 1, countB = 1;
        double from = 0;
        while (from < most)
        {
            double enoughA = a.EnoughUpTo(countA), enoughB = b.EnoughUpTo(countB), to = Math.Min(most, Math.Min(enoughA, enoughB));
            double atStart = Difference(a, countA, b, countB, from), atEnd = Difference(a, countA, b, countB, to);
            if (order == 0) order = Math.Sign(atStart);
            if (from > 0 && order != 0 && Math.Sign(atStart) == -order) return from;
            if (order != 0 && Math.Sign(atEnd) == -order) return from + (to - from) * (atStart / (atStart - atEnd));
            if (order == 0) order = Math.Sign(atEnd);
            if (enoughA <= to) countA++;
            if (enoughB <= to) countB++;
            if (Math.Max(countA, countB) > MostMachines) return null;
            from = to;
        }
        return null;
    }

    private static double Difference(CostLine a, int countA, CostLine b, int countB, double work) =>
        countA * a.OwningOne + work * a.Working - countB * b.OwningOne - work * b.Working;

    /// <summary>More of one kind nobody compares.</summary>
    private const int MostMachines = 1000;
}
