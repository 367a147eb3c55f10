namespace Platewright.Sizing.Hours;

/// <summary>
/// A place with its hours and its rules, and what follows for one machine. Somebody must be there to prepare and start
/// a build and to take the part off; in between it may run alone as far as the rules go.
/// </summary>
/// <remarks>
/// A time without anybody that a run may not go all through ends, for every run that began before it, at one moment:
/// its beginning plus what is allowed of it. Those moments increase with time, so a run begun in a stretch of attended
/// time is allowed if and only if it ends by the first of them after that stretch. Within a stretch an earlier start is
/// never worse, hence the earliest start is the first moment of the first stretch in which it is allowed.
/// One person is taken to be enough for all machines: handling never queues.
/// </remarks>
public sealed class Place
{
    private readonly double[] _mustEndByS;
    private readonly double[] _gapRunS;
    private readonly double _longestStretchS;

    /// <summary>A place.</summary>
    /// <exception cref="ArgumentException">The limits have problems; ask <see cref="RunLimits.Problems"/>.</exception>
    public Place(AttendedWeek week, RunLimits limits)
    {
        if (RunLimits.Problems(limits) is [var first, ..]) throw new ArgumentException(first.Sentence, nameof(limits));
        Week = week;
        Limits = limits;
        _gapRunS = [.. Enumerable.Range(0, week.Stretches.Length).Select(i => RunBeforeStopS(GapAfter(i)))];
        _mustEndByS = [.. Enumerable.Range(0, week.Stretches.Length).Select(MustEndByS)];
        _longestStretchS = week.IsAlways ? double.PositiveInfinity : week.Stretches.Max(s => s.LengthS);
    }

    /// <summary>When somebody is there.</summary>
    public AttendedWeek Week { get; }

    /// <summary>What may run without anybody.</summary>
    public RunLimits Limits { get; }

    /// <summary>
    /// Time of a week in which one machine can be running at all, s: the attended time, and of every time without
    /// anybody what a run may use of it.
    /// </summary>
    public double RunnableS => Week.IsAlways
        ? WeekTime.WeekS
        : Week.AttendedS + Enumerable.Range(0, _gapRunS.Length).Sum(i => Math.Min(_gapRunS[i], GapAfter(i).LengthS));

    /// <summary>The longest run (warm-up and build) that can ever go on here, without handling, s.</summary>
    public double LongestRunS => LongestRunWithS(0, 0, 0);

    /// <summary>
    /// The longest run that can ever go on here, s; 0 where none can, positive infinity where nothing limits it.
    /// </summary>
    /// <param name="prepareS">Handling before it, s, 0 or more.</param>
    /// <param name="releaseS">Cooling down after it, s, 0 or more; it counts where there are lessons.</param>
    /// <param name="takeOffS">Handling after it, s, 0 or more.</param>
    public double LongestRunWithS(double prepareS, double releaseS, double takeOffS)
    {
        if (Math.Max(prepareS, takeOffS) > _longestStretchS) return 0;
        if (Limits.LessonS is { } lesson)
            return Math.Max(0, Math.Min(lesson, _longestStretchS) - prepareS - releaseS - takeOffS);
        double longest = 0;
        for (int i = 0; i < _mustEndByS.Length; i++)
        {
            if (prepareS <= Length(i)) longest = Math.Max(longest, _mustEndByS[i] - StretchAt(i).StartS - prepareS);
        }
        return Week.IsAlways ? double.PositiveInfinity : longest;
    }

    /// <summary>First moment from one on at which a run with no handling may start; null: never here.</summary>
    /// <param name="fromS">A moment of the repeating week, s, finite.</param>
    /// <param name="runS">Warm-up and build, s, greater than 0.</param>
    public double? EarliestStart(double fromS, double runS) => EarliestStart(fromS, new BuildStages(runS));

    /// <summary>First moment from one on at which somebody may begin to prepare a build; null: never here.</summary>
    /// <param name="fromS">A moment of the repeating week, s, finite.</param>
    /// <param name="stages">What it takes.</param>
    public double? EarliestStart(double fromS, BuildStages stages)
    {
        if (stages.TakeOffS > _longestStretchS) return null;
        long first = FirstEndingFrom(fromS);
        // Once round the week; the first stretch again, because this time it may be met at its beginning.
        for (long k = first; k <= first + _mustEndByS.Length; k++)
        {
            double start = Math.Max(fromS, StretchAt(k).StartS);
            if (MayStart(k, start, stages)) return start;
        }
        return null;
    }

    /// <summary>The build started as early as may be; null where it can never be made here.</summary>
    /// <param name="fromS">A moment of the repeating week, s, finite.</param>
    /// <param name="stages">What it takes.</param>
    public PlannedBuild? Plan(double fromS, BuildStages stages)
    {
        if (EarliestStart(fromS, stages) is not { } start) return null;
        double ready = start + stages.PrepareS + stages.MachineS;
        double takenOff = TakenOffFrom(ready, stages.TakeOffS);
        return new PlannedBuild(fromS, start, ready, takenOff, takenOff + stages.TakeOffS);
    }

    /// <summary>Could a build like this ever be made here?</summary>
    public bool EverMakes(BuildStages stages) => EarliestStart(0, stages) is not null;

    /// <summary>First attended moment from one on, s.</summary>
    public double AttendedFrom(double momentS) =>
        Math.Max(momentS, StretchAt(FirstEndingFrom(momentS)).StartS);

    /// <summary>Last moment of a stretch of the first week at which a build may start, where one may, s.</summary>
    internal double LastStartInS(Stretch stretch, BuildStages stages)
    {
        double last = stretch.EndS - stages.PrepareS;
        if (Limits.LessonS is not null) return stretch.EndS - stages.BusyS;
        double mustEndBy = _mustEndByS[Week.Stretches.IndexOf(stretch)];
        return double.IsFinite(mustEndBy) ? Math.Min(last, mustEndBy - stages.PrepareS - stages.RunS) : last;
    }

    private bool MayStart(long k, double startS, BuildStages stages)
    {
        double endS = StretchAt(k).EndS + WeekTime.SameMomentS;
        double runFrom = startS + stages.PrepareS;
        if (runFrom > endS) return false;
        if (Limits.LessonS is { } lesson)
            return stages.BusyS <= lesson + WeekTime.SameMomentS && startS + stages.BusyS <= endS;
        int i = Index(k);
        double mustEndBy = _mustEndByS[i] + (k - i) / _mustEndByS.Length * WeekTime.WeekS;
        return runFrom + stages.RunS <= mustEndBy + WeekTime.SameMomentS;
    }

    private double TakenOffFrom(double readyS, double takeOffS)
    {
        for (long k = FirstEndingFrom(readyS); ; k++)
        {
            double from = Math.Max(readyS, StretchAt(k).StartS);
            if (from + takeOffS <= StretchAt(k).EndS + WeekTime.SameMomentS) return from;
        }
    }

    /// <summary>Number of the first stretch that ends at or after a moment; they are counted from week 0 on.</summary>
    private long FirstEndingFrom(double momentS)
    {
        if (Week.IsAlways) return 0;
        int n = _mustEndByS.Length;
        // The last stretch of the week before may reach into this one.
        long k = (long)Math.Floor(momentS / WeekTime.WeekS) * n - 1;
        while (StretchAt(k).EndS + WeekTime.SameMomentS < momentS) k++;
        return k;
    }

    private Stretch StretchAt(long k)
    {
        if (Week.IsAlways) return new Stretch(double.NegativeInfinity, double.PositiveInfinity);
        int i = Index(k);
        double shift = (k - i) / Week.Stretches.Length * WeekTime.WeekS;
        Stretch stretch = Week.Stretches[i];
        return new Stretch(stretch.StartS + shift, stretch.EndS + shift);
    }

    private int Index(long k)
    {
        int n = Week.Stretches.Length;
        return (int)((k % n + n) % n);
    }

    private double Length(int i) => Week.Stretches[i].LengthS;

    private Stretch GapAfter(int i) => Week.IsAlways
        ? new Stretch(double.PositiveInfinity, double.PositiveInfinity)
        : new Stretch(StretchAt(i).EndS, StretchAt(i + 1).StartS);

    /// <summary>How much of a time without anybody a run begun before it may use; infinity: all of it and more.</summary>
    private double RunBeforeStopS(Stretch gap)
    {
        if (Week.IsAlways) return double.PositiveInfinity;
        double allowed = Limits.LongestUnattendedS ?? double.PositiveInfinity;
        double lastMidnight = Math.Floor(gap.EndS / WeekTime.DayS) * WeekTime.DayS;
        if (!Limits.NightsAllowed && lastMidnight >= gap.StartS) allowed = 0;
        double from = WeekTime.WithinWeek(gap.StartS);
        if (!Limits.WeekendsAllowed && from + gap.LengthS > WeekTime.WeekendS)
            allowed = Math.Min(allowed, Math.Max(0, WeekTime.WeekendS - from));
        return allowed >= gap.LengthS ? double.PositiveInfinity : allowed;
    }

    private double MustEndByS(int i)
    {
        for (int j = i; j < i + _gapRunS.Length; j++)
        {
            double allowed = _gapRunS[Index(j)];
            if (double.IsFinite(allowed)) return StretchAt(j).EndS + allowed;
        }
        return double.PositiveInfinity;
    }
}
