using Platewright.Sizing.Cases;

namespace Platewright.Sizing.Answers;

/// <summary>How far the times of one machine may be off as a whole: all its builds off in the same way.</summary>
public static class TimeDoubts
{
    /// <summary>Shares below (negative or 0) and above, means weighted by time; nothing where it makes nothing.</summary>
    public static (double Low, double High) Of(SizingCase c, int machine)
    {
        double time = 0, low = 0, high = 0;
        foreach (WorkItem item in c.Projects.SelectMany(p => p.Items))
        {
            if (item.On[machine] is not { TimeS: { } seconds } making) continue;
            time += item.Quantity * seconds;
            low += item.Quantity * seconds * making.LowTime;
            high += item.Quantity * seconds * making.HighTime;
        }
        return time > 0 ? (low / time, high / time) : (0, 0);
    }
}
