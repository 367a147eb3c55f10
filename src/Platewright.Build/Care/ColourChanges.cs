using Platewright.Build.Heat;
using Platewright.Machines;

namespace Platewright.Build.Care;

/// <summary>
/// What changing the filament within a build costs, against building the colours as parts of their own.
/// </summary>
/// <param name="Changes">How often the filament is changed.</param>
/// <param name="PurgeMm3">Thrown away by all changes, mm³.</param>
/// <param name="PurgeG">The same, g.</param>
/// <param name="TimeS">Time of all changes, s.</param>
/// <param name="SeparateS">
/// What as many separate builds as there are colours take more than one, s: start, warm-up and release each time; null
/// where the machine never gets warm.
/// </param>
public sealed record ColourChanges(int Changes, double PurgeMm3, double PurgeG, double TimeS, double? SeparateS)
{
    /// <summary>Null without a change.</summary>
    public string? Sentence => Changes == 0 ? null
        : $"{Changes} changes of filament throw away {PurgeG:0.#} g and take {Minutes(TimeS)} min"
            + (SeparateS is { } s ? $"; each colour as a part of its own takes {Minutes(s)} min and no purge." : ".");

    /// <param name="heat">The machine with the material.</param>
    /// <param name="colours">How many colours the part has, 1 or more.</param>
    /// <param name="layers">
    /// How many layers have all of them, 0 or more; 1 for colours that follow each other upwards.
    /// </param>
    /// <param name="releaseS">Time until a part lets go, s; from <see cref="BuildCycleResult.ReleaseS"/>.</param>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range.</exception>
    public static ColourChanges Of(MachineHeat heat, int colours, int layers, double releaseS)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(colours, 1);
        ArgumentOutOfRangeException.ThrowIfLessThan(layers, 0);
        if (!(releaseS >= 0))
            throw new ArgumentOutOfRangeException(nameof(releaseS), releaseS, "a time is not negative");
        // A layer begins with the colour that the one below ended with.
        int changes = (colours - 1) * layers;
        Handling handling = heat.Machine.Handling;
        double purge = changes * handling.PurgeMm3;
        const double cm3PerMm3 = 1e-3;
        double? warmUp = heat.Machine.Heating is null ? 0 : heat.WarmUp?.Seconds;
        return new ColourChanges(
            changes, purge, purge * cm3PerMm3 * heat.Material.DensityGCm3, changes * handling.MaterialChangeS,
            (colours - 1) * (handling.StartS + warmUp + releaseS));
    }

    private static string Minutes(double seconds) => $"{seconds / 60:0}";
}
