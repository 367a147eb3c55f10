using System.Collections.Immutable;
using Platewright.Formats.Toml;
using Platewright.Machines;

namespace Platewright.Study;

/// <summary>Reads <c>[place]</c>: when somebody is there, how long a build may run alone, what the air allows.</summary>
internal static class PlaceReader
{
    private static readonly NumberRange Unattended = new(0, 10_000, "h");

    private static readonly NumberRange Lesson = NumberRange.Positive(24 * 60, "min");

    private const double MinutesPerHour = 60;

    public static PlacePlan Read(TomlTable root)
    {
        if (root.Table("place") is not { } place) return PlacePlan.Unsaid;
        ImmutableArray<TomlTable> tables = place.Tables("attended");
        ImmutableArray<AttendedPlan> attended = [.. tables.Select(Attended).OfType<AttendedPlan>()];
        if (place.Has("attended") && tables.IsEmpty && place.Entries["attended"] is TomlList)
            place.Refuse("attended", "nobody is ever there: no build could start; leave it out if somebody always is.");
        RefuseOverlaps(tables, attended);
        double? lesson = place.Number("lesson_min", Lesson);
        RefuseLongLesson(place, attended, lesson);
        PlacePlan read = new(
            attended,
            place.Flag("nights") ?? true,
            place.Flag("weekends") ?? true,
            place.Number("longest_unattended_h", Unattended),
            lesson,
            Exhausts.Named(place.Word("exhaust", Exhausts.Words)),
            place.Flag("low_emission_only") ?? false);
        if (attended.IsEmpty && tables.IsEmpty)
        {
            const string Why = "nothing says when somebody is there; add [[place.attended]] with days, from and to.";
            if (!read.Nights) place.Refuse("nights", Why);
            if (!read.Weekends) place.Refuse("weekends", Why);
            if (read.LongestUnattendedH is not null) place.Refuse("longest_unattended_h", Why);
        }
        return read;
    }

    private static AttendedPlan? Attended(TomlTable table)
    {
        const string DayWords = "expected days as [\"mon\", \"tue\"] or [\"mon-fri\"]";
        ImmutableArray<TomlText>? names = table.Texts("days");
        if (!table.Has("days")) table.Refuse("days", $"missing; {DayWords}.");
        List<int> days = [];
        foreach (TomlText name in names ?? [])
        {
            if (WeekTimes.DaysOf(name.Text) is { } found) days.AddRange(found);
            else table.Refuse(name.Place, $"{DayWords}, found \"{name.Text}\".");
        }
        if (names is { IsEmpty: true }) table.Refuse("days", $"{DayWords}; there is none.");
        int? from = Time(table, "from"), to = Time(table, "to");
        if (from >= to)
        {
            table.Refuse("to", "expected a later time than from; where somebody stays over midnight, write two tables.");
            return null;
        }
        return from is { } begin && to is { } end && days.Count > 0 ? new AttendedPlan([.. days.Distinct().Order()], begin, end) : null;
    }

    private static int? Time(TomlTable table, string key)
    {
        if (table.Text(key, required: true) is not { } text) return null;
        int? minutes = WeekTimes.Minutes(text);
        if (minutes is null) table.Refuse(key, $"expected a time of day as \"08:30\", found \"{text}\".");
        return minutes;
    }

    private static void RefuseOverlaps(ImmutableArray<TomlTable> tables, ImmutableArray<AttendedPlan> attended)
    {
        if (attended.Length != tables.Length) return;
        for (int i = 0; i < attended.Length; i++)
        {
            for (int j = 0; j < i; j++)
            {
                if (!attended[i].Days.Intersect(attended[j].Days).Any()) continue;
                if (attended[i].FromMin < attended[j].ToMin && attended[j].FromMin < attended[i].ToMin)
                    tables[i].Refuse("from", "these hours overlap those of another [[place.attended]] on the same day.");
            }
        }
    }

    private static void RefuseLongLesson(TomlTable place, ImmutableArray<AttendedPlan> attended, double? lesson)
    {
        if (lesson is not { } minutes || attended.IsEmpty) return;
        int longest = attended.Max(a => a.ToMin - a.FromMin);
        if (minutes > longest)
            place.Refuse("lesson_min", $"nobody is there for so long at a time: the longest is {longest / MinutesPerHour:0.##} h.");
    }
}
