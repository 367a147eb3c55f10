namespace Platewright.Sizing.Hours;

/// <summary>Somebody is there on this day of every week, both ends included.</summary>
/// <param name="Day">Day of the week.</param>
/// <param name="StartMin">Minutes from midnight, 0 … 1440.</param>
/// <param name="EndMin">Minutes from midnight, after the start, up to 1440: a night shift is two windows.</param>
public readonly record struct AttendedWindow(DayOfWeek Day, double StartMin, double EndMin)
{
    /// <summary>The same hours on several days, as in Monday to Friday, 08:00 to 17:00.</summary>
    public static IEnumerable<AttendedWindow> On(IEnumerable<DayOfWeek> days, double startMin, double endMin) =>
        days.Select(day => new AttendedWindow(day, startMin, endMin));
}

/// <summary>What is wrong with a window.</summary>
/// <param name="Index">Place in the list given, from 0; null where it is about the whole list.</param>
/// <param name="Sentence">What was wrong and what to do, for whoever wrote the hours down.</param>
public sealed record WindowProblem(int? Index, string Sentence);
