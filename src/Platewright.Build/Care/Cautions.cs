using System.Collections.Immutable;
using Platewright.Machines;

namespace Platewright.Build.Care;

/// <summary>
/// Plain words where the work can hurt someone. They caution and never certify: NIOSH 2024-103 and 2020-115 for the
/// air, NFPA 70 (NEC) 210.20(A) for circuits, the rest common practice.
/// </summary>
public static class Cautions
{
    /// <summary>Ends every sentence on circuits.</summary>
    public const string WhoDecides = "Local codes and a licensed electrician decide.";

    // From here on somebody sleeps or goes out: common practice, no source.
    private const double UnattendedHours = 3;

    /// <summary>About one build on one machine.</summary>
    /// <param name="material">What is built.</param>
    /// <param name="hours">How long the machine is on, h.</param>
    public static ImmutableArray<string> OfBuild(Material material, double hours)
    {
        var said = ImmutableArray.CreateBuilder<string>();
        if (hours >= UnattendedHours)
            said.Add(
                $"Runs {hours:0.#} h with heaters on: unattended heating wants runaway protection and a thermal fuse "
                + "in the machine, a smoke alarm, nothing that burns around it, and someone who can come.");
        if (material.Fumes is { } fumes) said.Add($"{material.Name}: {fumes}");
        return said.ToImmutable();
    }

    /// <summary>About machines that share a circuit.</summary>
    /// <param name="circuit">The circuit.</param>
    /// <param name="peaksW">Peak power of each machine on it, W.</param>
    /// <param name="hours">How long they run, h.</param>
    public static ImmutableArray<string> OfCircuit(Circuit circuit, IReadOnlyCollection<double> peaksW, double hours)
    {
        double peak = peaksW.Sum(), limit = circuit.LimitW(hours);
        bool reduced = limit < circuit.LimitW(0);
        string rating = $"{circuit.Amperes:0.#} A at {circuit.Volts:0} V";
        string rule = reduced
            ? $"a load of {Circuit.ContinuousHours:0} h or more may take 80 % of {rating} (NEC 210.20(A))"
            : $"the circuit gives {rating}";
        List<string> said = [];
        if (peak > limit)
            said.Add(
                $"{peaksW.Count} machines that warm up at once draw {peak:0} W; {rule}: {limit:0} W. "
                + $"Stagger their starts or spread them over circuits. {WhoDecides}");
        else if (peaksW.Count > 0)
            said.Add($"{peak:0} W with all machines warming up at once; {rule}: {limit:0} W. {WhoDecides}");
        if (!circuit.UnderNec && hours >= Circuit.ContinuousHours)
            said.Add($"For many hours keep a socket or strip to 8 to 10 A, and chain no strips. {WhoDecides}");
        return [.. said];
    }
}
