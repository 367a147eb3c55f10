using Platewright.Build.Care;
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
    /// <param name="filamentChanges">How often the filament is changed while building.</param>
    /// <exception cref="ArgumentException">The machine states no motion limits.</exception>
    public static BuildEstimate Estimate(
        PartPaths part, MachineHeat heat, bool full, CancellationToken cancel, int filamentChanges = 0)
    {
        LayerTimes layers = LayerSampler.Run(part, heat.Machine, heat.Material, full, SamplePhase, cancel);
        Outcome middle = Outcome.Of(part, layers, heat, filamentChanges);
        (ModelError time, ModelError energy) = RangeError.Of(heat, middle.Time.TotalS, middle.EnergyJ, (parameter, other) =>
        {
            LayerTimes there = RangeError.Moves(parameter)
                ? LayerSampler.Again(part, other.Machine, heat.Material, layers) : layers;
            Outcome outcome = Outcome.Of(part, there, other, filamentChanges);
            return (outcome.Time.TotalS, outcome.EnergyJ);
        });
        return middle.ToEstimate(part, layers) with { TimeError = time, EnergyError = energy };
    }

    /// <summary>From the first move to the last, s: enough to compare poses.</summary>
    public static double BuildingSeconds(PartPaths part, MachineHeat heat, CancellationToken cancel)
    {
        LayerTimes layers = LayerSampler.Run(part, heat.Machine, heat.Material, full: false, SamplePhase, cancel);
        double least = part.Recipe.MinimumLayerTimeFor(heat.Material);
        return layers.Layers.Sum(l => Math.Max(least, l.TotalS));
    }

    private const double SamplePhase = 0.5;

    private sealed record Outcome(TimeParts Time, MotionTimes Motion, BuildCycleResult Cycle, MachineHeat Heat, double MaterialMm3)
    {
        public double EnergyJ => Cycle.Energy?.TotalJ ?? 0;

        public static Outcome Of(PartPaths part, LayerTimes layers, MachineHeat heat, int filamentChanges)
        {
            MotionTimes motion = layers.Total;
            double least = part.Recipe.MinimumLayerTimeFor(heat.Material);
            double waiting = layers.Layers.Sum(l => Math.Max(0, least - l.TotalS));
            PerKind moving = motion.MovingS;
            moving[PathKind.Travel] += motion.StandstillS;
            Handling handling = heat.Machine.Handling;
            double changes = filamentChanges * handling.MaterialChangeS;
            double material = motion.MaterialMm3.Sum + heat.Machine.Extruder.PrimeMm3 + filamentChanges * handling.PurgeMm3;
            BuildCycleResult cycle = BuildCycle.Simulate(heat, new BuildLoad(moving.Sum + waiting + changes, material));
            TimeParts time = new()
            {
                WarmUpS = handling.StartS + (cycle.WarmUpS ?? 0),
                MovingS = moving,
                WaitingS = waiting,
                ChangesS = changes,
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
            Warp = WarpRisk.Of(Heat.Material, part.ContactMm, Heat.AirC),
            Notes = [.. part.Findings, .. BuildNotes.Of(Heat, Cycle, Time.TotalS, MaterialMm3)],
        };
    }
}
