using Platewright.Sizing.Hours;

namespace Platewright.Tests.Sizing.Hours;

/// <summary>The rules of a place read literally, quarter of an hour by quarter of an hour.</summary>
internal sealed class SteppingOracle(AttendedWindow[] windows, RunLimits limits)
{
    private const int Week = 7 * DrawnPlace.StepsPerDay;
    private readonly bool[] _there = There(windows);

    /// <summary>Step of the first start, null where four weeks have none.</summary>
    public int? EarliestStart(int from, BuildStages stages)
    {
        int prepare = Steps(stages.PrepareS);
        int run = Steps(stages.RunS);
        int release = Steps(stages.ReleaseS);
        for (int s = from; s <= from + 4 * Week; s++)
        {
            if (!SomebodyDuring(s, prepare) || !Attended(s + prepare)) continue;
            if (!MayRun(s + prepare, run)) continue;
            if (InHand(s + prepare + run + release, Steps(stages.TakeOffS)) is not { } inHand) continue;
            if (limits.LessonS is { } lesson &&
                (stages.BusyS > lesson || inHand != s + Steps(stages.BusyS) || !SomebodyDuring(s, inHand - s)))
            {
                continue;
            }
            return s;
        }
        return null;
    }

    public int? InHand(int ready, int takeOff)
    {
        for (int u = ready; u <= ready + 2 * Week; u++)
        {
            if (SomebodyDuring(u, takeOff)) return u + takeOff;
        }
        return null;
    }

    private bool MayRun(int from, int run)
    {
        int alone = 0;
        for (int cell = from; cell < from + run; cell++)
        {
            if (Cell(cell))
            {
                alone = 0;
                continue;
            }
            alone++;
            if (alone * DrawnPlace.StepS > limits.LongestUnattendedS) return false;
            if (!limits.WeekendsAllowed && Mod(cell) >= 5 * DrawnPlace.StepsPerDay) return false;
            if (!limits.NightsAllowed && TouchesMidnight(cell)) return false;
        }
        return true;
    }

    private bool TouchesMidnight(int cell)
    {
        int first = cell, last = cell;
        while (!Cell(first - 1)) first--;
        while (!Cell(last + 1)) last++;
        return Enumerable.Range(first, last - first + 2).Any(m => Mod(m) % DrawnPlace.StepsPerDay == 0);
    }

    private bool SomebodyDuring(int from, int steps) =>
        steps == 0 ? Attended(from) : Enumerable.Range(from, steps).All(Cell);

    private bool Attended(int moment) => Cell(moment - 1) || Cell(moment);

    private bool Cell(int cell) => _there[Mod(cell)];

    private static int Mod(int step) => (step % Week + Week) % Week;

    private static int Steps(double seconds) => (int)Math.Round(seconds / DrawnPlace.StepS);

    private static bool[] There(AttendedWindow[] windows)
    {
        bool[] there = new bool[Week];
        foreach (AttendedWindow w in windows)
        {
            int midnight = WeekTime.DayIndex(w.Day) * DrawnPlace.StepsPerDay;
            for (int k = Steps(w.StartMin * 60); k < Steps(w.EndMin * 60); k++) there[midnight + k] = true;
        }
        return there;
    }
}
