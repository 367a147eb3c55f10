namespace Platewright.Sizing.Hours;

/// <summary>What keeps copies from being in hand in time.</summary>
public enum Bottleneck
{
    /// <summary>Nothing: they are in time.</summary>
    None,

    /// <summary>Runs may not go on overnight; if they might, all would be in time.</summary>
    Nights,

    /// <summary>Runs may not go on over the weekend; if they might, all would be in time.</summary>
    Weekends,

    /// <summary>The longest unattended run; without it all would be in time.</summary>
    UnattendedLimit,

    /// <summary>The lesson; without it all would be in time.</summary>
    Lesson,

    /// <summary>No rule alone, but all of them together.</summary>
    RulesTogether,

    /// <summary>Somebody is there too seldom; with somebody day and night all would be in time.</summary>
    AttendedHours,

    /// <summary>Too few machines, or too little time: even day and night is not enough.</summary>
    MachineHours,
}

/// <summary>"24 of these by Friday": copies of one build on identical machines that are free at the start.</summary>
/// <remarks>
/// Exact. On one machine let f(t) be when a build asked for at t is in hand if started as early as may be. The earliest
/// allowed start never comes earlier for a later t, nor does the moment in hand for a later start; so f never decreases,
/// and by induction no schedule has its k-th build in hand before f applied k times. Machines do not hinder each other,
/// hence n of them have at most n times as many in hand by any moment as one has, and starting at once everywhere
/// reaches that.
/// </remarks>
/// <param name="Copies">How many are wanted.</param>
/// <param name="Machines">How many machines there are.</param>
/// <param name="LastInHandS">When the last copy is in hand, s; null where it can never be made here.</param>
/// <param name="DoneByDue">Copies in hand by the due moment, no more than wanted.</param>
/// <param name="LeastMachines">Fewest machines that are in time; null where no number is.</param>
/// <param name="Bottleneck">What keeps them from being in time.</param>
public sealed record DueDate(
    int Copies, int Machines, double? LastInHandS, int DoneByDue, int? LeastMachines, Bottleneck Bottleneck)
{
    /// <summary>Are all of them in hand by the due moment?</summary>
    public bool InTime => DoneByDue == Copies;

    /// <summary>The answer.</summary>
    /// <param name="place">Hours and rules.</param>
    /// <param name="stages">What one copy takes.</param>
    /// <param name="copies">1 or more.</param>
    /// <param name="machines">1 or more.</param>
    /// <param name="startS">All machines are free from then on; a moment of the repeating week, s.</param>
    /// <param name="dueS">All must be in hand by then, s; at or after the start.</param>
    public static DueDate Of(Place place, BuildStages stages, int copies, int machines, double startS, double dueS)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(copies, 1);
        ArgumentOutOfRangeException.ThrowIfLessThan(machines, 1);
        if (!(dueS >= startS))
            throw new ArgumentOutOfRangeException(nameof(dueS), dueS, "Expected no moment before the start.");
        int rounds = (copies - 1) / machines + 1;
        double? last = startS;
        for (int k = 0; k < rounds && last is not null; k++) last = place.Plan(last.Value, stages)?.InHandS;
        int perMachine = InHandBy(place, stages, copies, startS, dueS);
        int done = (int)Math.Min(copies, (long)perMachine * machines);
        return new DueDate(
            copies,
            machines,
            last,
            done,
            perMachine == 0 ? null : (copies - 1) / perMachine + 1,
            done == copies ? Bottleneck.None : Find());

        Bottleneck Find()
        {
            foreach ((RunLimits limits, Bottleneck what) in Relaxed(place.Limits))
            {
                if (limits != place.Limits && Enough(new Place(place.Week, limits))) return what;
            }
            return Enough(new Place(AttendedWeek.Always, RunLimits.None))
                ? Bottleneck.AttendedHours
                : Bottleneck.MachineHours;
        }

        bool Enough(Place other) => (long)InHandBy(other, stages, copies, startS, dueS) * machines >= copies;
    }

    private static IEnumerable<(RunLimits Limits, Bottleneck What)> Relaxed(RunLimits limits) =>
    [
        (limits with { NightsAllowed = true }, Bottleneck.Nights),
        (limits with { WeekendsAllowed = true }, Bottleneck.Weekends),
        (limits with { LongestUnattendedS = null }, Bottleneck.UnattendedLimit),
        (limits with { LessonS = null }, Bottleneck.Lesson),
        (RunLimits.None, Bottleneck.RulesTogether),
    ];

    private static int InHandBy(Place place, BuildStages stages, int atMost, double startS, double dueS)
    {
        int count = 0;
        double now = startS;
        while (count < atMost && place.Plan(now, stages) is { } plan && plan.InHandS <= dueS + WeekTime.SameMomentS)
        {
            count++;
            now = plan.InHandS;
        }
        return count;
    }
}
