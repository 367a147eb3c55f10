using System.Collections.Immutable;
using Platewright.Build.Heat;
using Platewright.Build.Motion;
using Platewright.Machines;

namespace Platewright.Build.Estimates;

/// <summary>
/// What a build takes, from layers to the document:
/// <code>
/// mesh ─► PartPaths ─► LayerTimes ─► BuildCycle ─► BuildEstimate
///        (layers, paths)  (motion)       (heat)
/// </code>
/// </summary>
public static class BuildEstimator
{
    /// <param name="part">The part in its pose, for the recipe.</param>
    /// <param name="heat">The machine and the material.</param>
    /// <param name="full">Plan every layer instead of a sample.</param>
    /// <param name="cancel">Stops the work.</param>
    /// <exception cref="ArgumentException">The machine states no motion limits.</exception>
    public static BuildEstimate Estimate(PartPaths part, MachineHeat heat, bool full, CancellationToken cancel)
    {
        LayerTimes layers = LayerSampler.Run(part, heat.Machine, heat.Material, full, SamplePhase, cancel);
        Outcome middle = Outcome.Of(part, layers, heat);
        ImmutableArray<(MachineParameter Parameter, ValueRange Range)> ranges =
            [.. MachineParameters.All.Select(p => (p, p.RangeOf(heat.Machine))).Where(p => p.Item2 is not null)
                .Select(p => (p.p, p.Item2!.Value))];
        List<(double, double)> time = [], energy = [];
        foreach ((MachineParameter parameter, ValueRange range) in ranges)
        {
            Outcome low = At(range.Low), high = At(range.High);
            time.Add(Spread(middle.Time.TotalS, low.Time.TotalS, high.Time.TotalS));
            energy.Add(Spread(middle.EnergyJ, low.EnergyJ, high.EnergyJ));

            Outcome At(double value)
            {
                MachineHeat other = new(parameter.With(heat.Machine, value), heat.Material, heat.RoomC);
                bool moves = !parameter.Key.StartsWith("heating.", StringComparison.Ordinal);
                return Outcome.Of(part, moves ? LayerSampler.Again(part, other.Machine, heat.Material, layers) : layers, other);
            }
        }
        return middle.ToEstimate(part, layers) with
        {
            TimeError = new ModelError(-ModelError.PriorTime, ModelError.PriorTime, ModelError.Prior).With(time),
            EnergyError = new ModelError(-ModelError.PriorEnergy, ModelError.PriorEnergy, ModelError.Prior).With(energy),
        };
    }

    /// <summary>From the first move to the last, s: enough to compare poses.</summary>
    public static double BuildingSeconds(PartPaths part, MachineHeat heat, CancellationToken cancel)
    {
        LayerTimes layers = LayerSampler.Run(part, heat.Machine, heat.Material, full: false, SamplePhase, cancel);
        double least = part.Recipe.MinimumLayerTimeFor(heat.Material);
        return layers.Layers.Sum(l => Math.Max(least, l.TotalS));
    }

    private const double SamplePhase = 0.5;

    private static (double Low, double High) Spread(double middle, double a, double b) => middle > 0
        ? (Math.Min(0, Math.Min(a, b) / middle - 1), Math.Max(0, Math.Max(a, b) / middle - 1))
        : (0, 0);

    private sealed record Outcome(TimeParts Time, MotionTimes Motion, BuildCycleResult Cycle, MachineHeat Heat, double MaterialMm3)
    {
        public double EnergyJ => Cycle.Energy?.TotalJ ?? 0;

        public static Outcome Of(PartPaths part, LayerTimes layers, MachineHeat heat)
        {
            MotionTimes motion = layers.Total;
            double least = part.Recipe.MinimumLayerTimeFor(heat.Material);
            double waiting = layers.Layers.Sum(l => Math.Max(0, least - l.TotalS));
            PerKind moving = motion.MovingS;
            moving[PathKind.Travel] += motion.StandstillS;
            double material = motion.MaterialMm3.Sum + heat.Machine.Extruder.PrimeMm3;
            BuildCycleResult cycle = BuildCycle.Simulate(heat, new BuildLoad(moving.Sum + waiting, material));
            TimeParts time = new()
            {
                WarmUpS = heat.Machine.Handling.StartS + (cycle.WarmUpS ?? 0),
                MovingS = moving,
                WaitingS = waiting,
                ReleaseS = cycle.ReleaseS ?? 0,
            };
            return new Outcome(time, motion, cycle, heat, material);
        }

        public BuildEstimate ToEstimate(PartPaths part, LayerTimes layers) => new()
        {
            Layers = part.LayerCount,
            Time = Time,
            MaterialMm3 = MaterialMm3,
            SupportMm3 = Motion.MaterialMm3[PathKind.Support],
            FilamentMm = MaterialMm3 / new Filament(Heat.Machine.Extruder.FilamentMm).AreaMm2,
            MassG = MaterialMm3 * Heat.Material.DensityGCm3 / 1000,
            Heat = Cycle,
            RelativeError = Time.TotalS > 0 ? layers.ErrorS / Time.TotalS : 0,
            TimeError = new ModelError(0, 0, ModelError.Prior),
            EnergyError = new ModelError(0, 0, ModelError.Prior),
            Notes = [.. part.Findings, .. Cycle.Notes, .. HeatNotes()],
        };

        private IEnumerable<string> HeatNotes()
        {
            if (Heat.Machine.Heating is null)
                yield return $"{Heat.Machine.Name} describes no heaters: warm-up, release and energy are not counted.";
            else if (Cycle.WarmUpS is null)
                yield return $"{Heat.Machine.Name} never gets ready for {Heat.Material.Name}: warm-up and energy are not counted.";
            else if (Cycle.ReleaseS is null)
                yield return "the room is too warm for the part to let go: release is not counted.";
        }
    }
}
