using System.Collections.Immutable;

namespace Platewright.Sizing.Hours;

/// <summary>A stretch of time in which somebody is there without a break, both ends included, s.</summary>
/// <param name="StartS">At least 0, less than a week.</param>
/// <param name="EndS">After the start; more than a week where the stretch goes on into the next one.</param>
public readonly record struct Stretch(double StartS, double EndS)
{
    /// <summary>How long, s.</summary>
    public double LengthS => EndS - StartS;
}

/// <summary>When somebody is there, the same every week.</summary>
public sealed class AttendedWeek
{
    private const double DayMin = 1440;

    private AttendedWeek(ImmutableArray<Stretch> stretches) => Stretches = stretches;

    /// <summary>Somebody is there day and night.</summary>
    public static AttendedWeek Always { get; } = new([new Stretch(0, WeekTime.WeekS)]);

    /// <summary>
    /// In order of their starts, apart from each other: windows that touch are one stretch, over midnight and over the
    /// end of the week too.
    /// </summary>
    public ImmutableArray<Stretch> Stretches { get; }

    /// <summary>Nobody is ever away.</summary>
    public bool IsAlways => AttendedS >= WeekTime.WeekS;

    /// <summary>Time of a week in which somebody is there, s.</summary>
    public double AttendedS => Stretches.Sum(s => s.LengthS);

    /// <summary>The week these windows make.</summary>
    /// <param name="windows">In any order.</param>
    /// <exception cref="ArgumentException">There are problems; ask <see cref="Problems"/> first.</exception>
    public static AttendedWeek Of(IEnumerable<AttendedWindow> windows)
    {
        AttendedWindow[] given = [.. windows];
        if (Problems(given) is [var first, ..]) throw new ArgumentException(first.Sentence, nameof(windows));
        List<Stretch> merged = [];
        foreach (Stretch next in given.Select(InWeek).OrderBy(s => s.StartS))
        {
            if (merged.Count > 0 && merged[^1].EndS == next.StartS)
                merged[^1] = merged[^1] with { EndS = next.EndS };
            else
                merged.Add(next);
        }
        if (merged.Count > 1 && merged[0].StartS == 0 && merged[^1].EndS == WeekTime.WeekS)
        {
            merged[^1] = merged[^1] with { EndS = WeekTime.WeekS + merged[0].EndS };
            merged.RemoveAt(0);
        }
        return new AttendedWeek([.. merged]);
    }

    /// <summary>What is wrong with windows that somebody wrote down; empty where nothing is.</summary>
    public static ImmutableArray<WindowProblem> Problems(IReadOnlyList<AttendedWindow> windows)
    {
        if (windows.Count == 0)
            return [new WindowProblem(null, "Nobody is ever there: name at least one window of attended hours.")];
        ImmutableArray<WindowProblem>.Builder problems = ImmutableArray.CreateBuilder<WindowProblem>();
        for (int i = 0; i < windows.Count; i++)
        {
            AttendedWindow w = windows[i];
            if (!Enum.IsDefined(w.Day))
                problems.Add(new(i, "That is no day of the week: name Monday to Sunday."));
            else if (!(w.StartMin >= 0 && w.StartMin < DayMin))
                problems.Add(new(i, $"{w.Day} starts outside its day: give a time from 00:00 to before 24:00."));
            else if (!(w.EndMin <= DayMin))
                problems.Add(new(i, $"{w.Day} ends after 24:00: a day has 24 h; give the rest to the next day."));
            else if (!(w.EndMin > w.StartMin))
                problems.Add(new(i, $"{w.Day} ends at {Time(w.EndMin)}, not after its start at {Time(w.StartMin)}: " +
                    "give an end after the start, and split hours over midnight into two days."));
        }
        if (problems.Count == 0) problems.AddRange(Overlaps(windows));
        return problems.ToImmutable();
    }

    private static IEnumerable<WindowProblem> Overlaps(IReadOnlyList<AttendedWindow> windows)
    {
        int[] order = [.. Enumerable.Range(0, windows.Count).OrderBy(i => InWeek(windows[i]).StartS)];
        for (int k = 1; k < order.Length; k++)
        {
            AttendedWindow before = windows[order[k - 1]];
            AttendedWindow after = windows[order[k]];
            if (before.Day == after.Day && after.StartMin < before.EndMin)
            {
                yield return new WindowProblem(
                    Math.Max(order[k - 1], order[k]),
                    $"{after.Day} has windows that overlap: {Time(before.StartMin)} to {Time(before.EndMin)} and " +
                    $"{Time(after.StartMin)} to {Time(after.EndMin)}; join them.");
            }
        }
    }

    private static Stretch InWeek(AttendedWindow window) =>
        new(WeekTime.Moment(window.Day, window.StartMin), WeekTime.Moment(window.Day, window.EndMin));

    private static string Time(double minutes) =>
        $"{Math.Floor(minutes / 60):00}:{Math.Floor(minutes % 60):00}";
}
