namespace Platewright.Sizing.Mixing;

/// <summary>The problem on its grid of integers. Jobs lie by project; tables are job-major.</summary>
internal sealed record IntegerMix
{
    /// <summary>In <see cref="Hours"/>: the kind cannot make the job.</summary>
    public const long Not = -1;

    /// <summary>In <see cref="Limit"/>: there is none.</summary>
    public const long NoLimit = long.MaxValue;

    public required long[] Cost { get; init; }

    public required long[] Capacity { get; init; }

    public required int[] Least { get; init; }

    public required int[] Most { get; init; }

    /// <summary>Per limit (prices, floor, power, machines) what one of each kind uses.</summary>
    public required long[][] Use { get; init; }

    public required long[] Limit { get; init; }

    /// <summary>Per project its first job; one more entry at the end.</summary>
    public required int[] FirstJob { get; init; }

    public required long[] Weight { get; init; }

    /// <summary>Of all projects, also those that a reduction dropped.</summary>
    public required long TotalWeight { get; init; }

    public required long[] Hours { get; init; }

    public required long[] Running { get; init; }

    public int Kinds => Cost.Length;

    public int Projects => Weight.Length;

    public int Jobs => FirstJob[^1];

    public int Pairs => Hours.Count(h => h != Not);

    public bool Can(int job, int kind) => Hours[job * Kinds + kind] != Not;

    /// <summary>The limit that these counts break, if any.</summary>
    public MixLimit? Broken(int[] counts)
    {
        for (int l = 0; l < Limit.Length; l++)
        {
            long used = 0;
            for (int k = 0; k < Kinds; k++) used += Use[l][k] * counts[k];
            if (used > Limit[l]) return (MixLimit)l;
        }
        return null;
    }

    public IntegerMix Without(MixLimit limit)
    {
        if (limit == MixLimit.Counts) return this with { Most = [.. Most.Select(_ => MixGrid.GreatestCount)] };
        long[] limits = [.. Limit];
        limits[(int)limit] = NoLimit;
        return this with { Limit = limits };
    }
}

/// <summary>What is asked: the least cost at this weight, or the greatest weight.</summary>
internal readonly record struct MixGoal(bool Coverage, long Target)
{
    public static readonly MixGoal MostCoverage = new(true, 0);

    public static MixGoal Cheapest(long target) => new(false, target);
}

/// <summary>A mix; its value is what is minimised: cost, or less the weight covered.</summary>
internal sealed record FoundMix(int[] Counts, int[] KindOfJob, long Value);

/// <summary>What a solver says: its best, a value no mix goes below, and why it stopped.</summary>
/// <param name="Best">Null where none was found; with <see cref="MixStop.Proved"/> there is none.</param>
internal sealed record MixOutcome(FoundMix? Best, long Bound, MixStop Stop)
{
    public bool ProvedNone => Best is null && Stop == MixStop.Proved;
}
