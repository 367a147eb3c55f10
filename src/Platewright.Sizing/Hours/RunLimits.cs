using System.Collections.Immutable;

namespace Platewright.Sizing.Hours;

/// <summary>What is wrong with a limit.</summary>
/// <param name="Property">Name of the property of <see cref="RunLimits"/>.</param>
/// <param name="Sentence">What was wrong and what to do.</param>
public sealed record LimitProblem(string Property, string Sentence);

/// <summary>
/// The place's own rules for machines that run while nobody is there. They are the place's to make, with whoever
/// answers for fire safety there; nothing here recommends leaving a hot machine alone. A run is warm-up and build:
/// cooling down with the heaters off is none.
/// </summary>
public sealed record RunLimits
{
    /// <summary>Whatever the hour, however long.</summary>
    public static RunLimits None { get; } = new();

    /// <summary>
    /// May a run go on after the last one has left for the day? Where not, no run may reach into a time without
    /// anybody that touches a midnight; a lunch hour does not.
    /// </summary>
    public bool NightsAllowed { get; init; } = true;

    /// <summary>
    /// May a run go on without anybody on a Saturday or a Sunday? Where not, it must be over by Friday's midnight,
    /// or somebody must be there.
    /// </summary>
    public bool WeekendsAllowed { get; init; } = true;

    /// <summary>
    /// Longest stretch of a run without anybody, s, 0 or more; 0: somebody must be there throughout; null: no limit.
    /// </summary>
    public double? LongestUnattendedS { get; init; }

    /// <summary>
    /// Length of a lesson, s, greater than 0; null where there are none. Pupils see their build start and take it
    /// home: preparing, warming up, building, cooling down and taking off together take no longer, and all of it lies
    /// in one stretch with somebody there. It binds whatever the other rules allow; a place that lets builds go on
    /// after the lesson has none.
    /// </summary>
    public double? LessonS { get; init; }

    /// <summary>What is wrong with limits that somebody wrote down; empty where nothing is.</summary>
    public static ImmutableArray<LimitProblem> Problems(RunLimits limits)
    {
        ImmutableArray<LimitProblem>.Builder problems = ImmutableArray.CreateBuilder<LimitProblem>();
        if (limits.LongestUnattendedS is { } longest && !(longest >= 0 && double.IsFinite(longest)))
            problems.Add(new(nameof(LongestUnattendedS), "The longest unattended run must be 0 h or more; leave it " +
                "out where there is no limit."));
        if (limits.LessonS is { } lesson && !(lesson > 0 && lesson <= WeekTime.DayS))
            problems.Add(new(nameof(LessonS), "A lesson must be longer than 0 min and no longer than a day; leave it " +
                "out where there are none."));
        return problems.ToImmutable();
    }
}
