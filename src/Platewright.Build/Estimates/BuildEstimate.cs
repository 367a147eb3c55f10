using System.Collections.Immutable;
using Platewright.Build.Care;
using Platewright.Build.Heat;

namespace Platewright.Build.Estimates;

/// <summary>What one build takes on one machine.</summary>
public sealed record BuildEstimate
{
    public required int Layers { get; init; }

    public required TimeParts Time { get; init; }

    /// <summary>Material laid down, what is primed and purged included, mm³.</summary>
    public required double MaterialMm3 { get; init; }

    /// <summary>Of it what supports take, mm³.</summary>
    public double SupportMm3 { get; init; }

    /// <summary>Length of filament, mm.</summary>
    public required double FilamentMm { get; init; }

    public required double MassG { get; init; }

    /// <summary>The build cycle as heat and energy see it.</summary>
    public required BuildCycleResult Heat { get; init; }

    /// <summary>Half-width of the 99 % interval of the time that comes from layers not planned, as a share of the total.</summary>
    public required double RelativeError { get; init; }

    /// <summary>How far the model may be off: 95 %.</summary>
    public required ModelError TimeError { get; init; }

    public required ModelError EnergyError { get; init; }

    /// <summary>Indicative rank of how much it wants to curl off; null for a motion program, whose contact is not known.</summary>
    public WarpRisk? Warp { get; init; }

    /// <summary>What a person should know, in sentences.</summary>
    public ImmutableArray<string> Notes { get; init; } = [];
}
