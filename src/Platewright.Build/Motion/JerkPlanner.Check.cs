namespace Platewright.Build.Motion;

/// <content>Whether a profile keeps the limits of what it runs over.</content>
internal sealed partial class JerkPlanner
{
    private enum Finding
    {
        None,
        Move,
        Vertex,
    }

    /// <summary>Looks for what a profile is too fast for: the slowest such vertex, or the slowest such move.</summary>
    private Finding Check(int left, int right, in DoubleS profile, out int vertex, out double cruise)
    {
        cruise = 0;
        if (right - left > WalkAtOnce)
        {
            vertex = _slowest.IndexOfLeast(left + 1, right);
            if (Exceeds(profile, left, vertex)) return Finding.Vertex;
            vertex = SlowestAtPeak(left, right, profile);
            if (vertex >= 0 && Exceeds(profile, left, vertex)) return Finding.Vertex;
        }
        return Walk(left, right, profile, out vertex, out cruise);
    }

    private int SlowestAtPeak(int left, int right, in DoubleS profile)
    {
        Span<double> inner = _at.AsSpan(left + 1, right - left - 1);
        int first = FirstBeyond(inner, profile.RisesAbove(profile.PeakMmS) + _at[left]);
        int end = FirstBeyond(inner, profile.FallsBelow(profile.PeakMmS) + _at[left]);
        return first < end ? _slowest.IndexOfLeast(left + 1 + first, left + 1 + end) : -1;
    }

    private static int FirstBeyond(ReadOnlySpan<double> rising, double value)
    {
        int found = rising.BinarySearch(value);
        return found < 0 ? ~found : found;
    }

    private bool Exceeds(in DoubleS profile, int left, int vertex)
    {
        double limit = _limit[vertex] * (1 + Slack), at = _at[vertex] - _at[left];
        return profile.PeakMmS > limit && at > profile.RisesAbove(limit) && at < profile.FallsBelow(limit);
    }

    /// <summary>
    /// Checks every vertex and move of a span. Of equally slow vertices the one furthest from both anchors is taken:
    /// its limit is reached soonest. A move alone is named only where no vertex is as slow: then what is too fast lies
    /// within moves of that speed, and holding the span down to it costs nothing elsewhere.
    /// </summary>
    private Finding Walk(int left, int right, in DoubleS profile, out int vertex, out double cruise)
    {
        double peak = profile.PeakMmS, slowest = double.PositiveInfinity, room = 0, origin = _at[left];
        double whole = _at[right] - origin;
        vertex = -1;
        cruise = double.PositiveInfinity;
        for (int k = left; k < right; k++)
        {
            double limit = _limit[k] * (1 + Slack), at = _at[k] - origin;
            if (k > left && limit < peak && _limit[k] <= slowest
                && at > profile.RisesAbove(limit) && at < profile.FallsBelow(limit))
            {
                double space = Math.Min(at, whole - at);
                if (_limit[k] < slowest || space > room)
                    (slowest, room, vertex) = (_limit[k], space, k);
            }
            double most = _cruise[k] * (1 + Slack);
            if (most < peak && _cruise[k] < cruise
                && _at[k + 1] - origin > profile.RisesAbove(most) && at < profile.FallsBelow(most))
            {
                cruise = _cruise[k];
            }
        }
        if (vertex >= 0 && slowest <= cruise) return Finding.Vertex;
        return double.IsInfinity(cruise) ? Finding.None : Finding.Move;
    }
}
