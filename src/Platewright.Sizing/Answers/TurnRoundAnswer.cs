using System.Collections.Immutable;
using Platewright.Sizing.Cases;
using Platewright.Sizing.Hours;

namespace Platewright.Sizing.Answers;

/// <summary>The same part on every machine, from the model changed to the part in hand.</summary>
/// <param name="Item">The part: of those that most machines make, the one in the middle by time.</param>
/// <param name="On">One for each machine; null where it is not made or not timed there.</param>
public sealed record TurnRoundAnswer(WorkItem Item, ImmutableArray<MachineTurnRound?> On)
{
    private const double SecondsPerMinute = 60;

    /// <summary>Null where no time is known.</summary>
    public static TurnRoundAnswer? Of(SizingCase c)
    {
        WorkItem[] timed = [.. c.Projects.SelectMany(p => p.Items).Where(i => i.On.Any(m => m is { TimeS: not null, Reckoned: false }))];
        if (timed.Length == 0) return null;
        int most = timed.Max(Made);
        WorkItem[] common = [.. timed.Where(i => Made(i) == most).OrderBy(i => i.ReferenceS).ThenBy(i => i.Id, StringComparer.Ordinal)];
        WorkItem middle = common[(common.Length - 1) / 2];
        return new TurnRoundAnswer(middle, [.. middle.On.Select(m => Of(c, m))]);
    }

    private static int Made(WorkItem item) => item.On.Count(m => m is { TimeS: not null, Reckoned: false });

    private static MachineTurnRound? Of(SizingCase c, Making? making)
    {
        if (making is not { TimeS: not null, Reckoned: false }) return null;
        BuildStages stages = Loads.StagesOf(making, c.Costs);
        if (TurnRoundRange.Of(c.Place, stages) is not { } range) return null;
        TimeDoubt doubt = new(1 + making.LowTime, 1 + making.HighTime);
        return new MachineTurnRound(
            range, stages, Iterations.InDay(c.Place, stages, c.Costs.LookMin.Value * SecondsPerMinute, LongestDay(c.Place.Week), doubt));
    }

    private static DayOfWeek LongestDay(AttendedWeek week) => Enum.GetValues<DayOfWeek>()
        .OrderBy(WeekTime.DayIndex)
        .MaxBy(day => week.Stretches.Sum(s => Overlap(s, WeekTime.Moment(day, 0))));

    private static double Overlap(Stretch s, double midnight) =>
        Math.Max(0, Math.Min(s.EndS, midnight + WeekTime.DayS) - Math.Max(s.StartS, midnight));
}

/// <param name="Iterations">In the working day with the most hours.</param>
public sealed record MachineTurnRound(TurnRoundRange Range, BuildStages Stages, Iterations Iterations);
