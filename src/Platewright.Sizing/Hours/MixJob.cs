namespace Platewright.Sizing.Hours;

/// <summary>A build that comes again and again.</summary>
public sealed record MixJob
{
    /// <summary>A build of the mix.</summary>
    /// <param name="stages">What one build takes.</param>
    /// <param name="perWeek">Builds per week wished, greater than 0.</param>
    /// <param name="parts">Parts per build, greater than 0; a mean of several jobs need not be whole.</param>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range or not finite.</exception>
    public MixJob(BuildStages stages, double perWeek, double parts = 1)
    {
        if (!(perWeek > 0 && double.IsFinite(perWeek)))
            throw new ArgumentOutOfRangeException(nameof(perWeek), perWeek, "Expected more than 0.");
        if (!(parts > 0 && double.IsFinite(parts)))
            throw new ArgumentOutOfRangeException(nameof(parts), parts, "Expected more than 0.");
        Stages = stages;
        PerWeek = perWeek;
        Parts = parts;
    }

    /// <summary>What one build takes.</summary>
    public BuildStages Stages { get; }

    /// <summary>Builds per week wished.</summary>
    public double PerWeek { get; }

    /// <summary>Parts per build.</summary>
    public double Parts { get; }
}
