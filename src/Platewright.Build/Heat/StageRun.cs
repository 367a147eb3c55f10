using System.Collections.Immutable;
using Platewright.Build.Heat.Network;

namespace Platewright.Build.Heat;

/// <summary>One stage of a cycle that was run: its energy, peak and picture.</summary>
/// <param name="Stage">Which.</param>
/// <param name="Machine">The network it ran on.</param>
/// <param name="StartTemperatureC">Its temperatures at the start, °C.</param>
/// <param name="Run">The run.</param>
/// <param name="OtherW">Drawn besides the heaters, W.</param>
internal sealed record StageRun(
    CycleStage Stage, MachineNetwork Machine, double[] StartTemperatureC, NetworkRun Run, double OtherW)
{
    public double Seconds => Run.TimeS;

    public double PeakW
    {
        get
        {
            int nodes = Machine.Network.Nodes.Length;
            double peak = 0;
            foreach (RunStep step in Run.Steps)
                peak = Math.Max(peak, Math.Max(Sum(step.StartRate, nodes), Sum(step.EndRate, nodes)));
            return peak + OtherW;
        }
    }

    /// <summary>Starts a stage where another ended, or, without one, at room temperature.</summary>
    public static StageRun Start(CycleStage stage, MachineNetwork machine, double otherW, StageRun? before = null)
    {
        ThermalNetwork network = before is null
            ? machine.Network
            : machine.From(before.Machine, before.Run.TemperatureC);
        return new StageRun(stage, machine, [.. network.Nodes.Select(n => n.StartC)], new NetworkRun(network), otherW);
    }

    /// <summary>
    /// About <paramref name="count"/> moments at even times, and both sides of every event besides.
    /// </summary>
    public ImmutableArray<CyclePoint> Picture(double startS, int count)
    {
        var points = ImmutableArray.CreateBuilder<CyclePoint>();
        IReadOnlyList<RunStep> steps = Run.Steps;
        double spacing = Seconds / Math.Max(1, count - 1), next = 0;
        for (int i = 0; i < steps.Count; i++)
        {
            RunStep step = steps[i];
            bool afterEvent = i == 0 || !step.Modes.AsSpan().SequenceEqual(steps[i - 1].Modes);
            bool beforeEvent = i == steps.Count - 1 || !step.Modes.AsSpan().SequenceEqual(steps[i + 1].Modes);
            if (afterEvent) points.Add(Point(step, step.StartS, startS));
            while (next <= step.StartS) next += spacing;
            for (; next < step.EndS; next += spacing) points.Add(Point(step, next, startS));
            if (beforeEvent) points.Add(Point(step, step.EndS, startS));
        }
        return points.ToImmutable();
    }

    private CyclePoint Point(RunStep step, double timeS, double startS)
    {
        Span<double> t = stackalloc double[Machine.Network.Nodes.Length];
        double power = Run.At(step, timeS, t) + OtherW;
        return new CyclePoint(
            startS + timeS, Stage, Of(t, Machine.Nozzle), Of(t, Machine.Bed), Of(t, Machine.ChamberAir),
            Of(t, Machine.Part), power);
    }

    private static double? Of(ReadOnlySpan<double> temperatures, int node) => node < 0 ? null : temperatures[node];

    private static double Sum(double[] rates, int nodes)
    {
        double sum = 0;
        for (int i = nodes; i < rates.Length; i++) sum += rates[i];
        return sum;
    }
}
