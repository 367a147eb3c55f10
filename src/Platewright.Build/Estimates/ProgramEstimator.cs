using Platewright.Build.Heat;
using Platewright.Build.Motion;
using Platewright.Build.Programs;
using Platewright.Formats.Programs;
using Platewright.Machines;

namespace Platewright.Build.Estimates;

/// <summary>What a ready motion program takes on a machine: the program says where and how much, the machine how fast.</summary>
public static class ProgramEstimator
{
    /// <param name="program">As read.</param>
    /// <param name="machine">With motion limits.</param>
    /// <param name="material">What is built; the program's own temperatures take the place of its usual ones.</param>
    /// <param name="cancel">Stops the work.</param>
    /// <exception cref="ArgumentException">The machine states no motion limits.</exception>
    public static BuildEstimate Estimate(MotionProgram program, Machine machine, Material material, CancellationToken cancel)
    {
        MachineHeat heat = new(machine, Heated(program, material));
        Outcome middle = Outcome.Of(program, heat, null, cancel);
        (ModelError time, ModelError energy) = RangeError.Of(heat, middle.Time.TotalS, middle.EnergyJ, (parameter, other) =>
        {
            Outcome there = Outcome.Of(program, other, RangeError.Moves(parameter) ? null : middle.Motion, cancel);
            return (there.Time.TotalS, there.EnergyJ);
        });
        return new BuildEstimate
        {
            Layers = program.Layers,
            Time = middle.Time,
            MaterialMm3 = middle.MaterialMm3,
            FilamentMm = program.Filament.NetMm,
            MassG = middle.MaterialMm3 * material.DensityGCm3 / 1000,
            Heat = middle.Cycle,
            RelativeError = 0,
            TimeError = time,
            EnergyError = energy,
            Notes =
            [
                .. ProgramFit.Check(program, machine).Select(o => $"{machine.Name}, {o.Sentence}"),
                .. BuildNotes.Of(heat, middle.Cycle, middle.Time.TotalS, middle.MaterialMm3),
                .. program.Unknown.Select(u => $"The word {u.Word} ({u.Count} times, first in line {u.FirstLine}) is not known and was passed over."),
                .. program.Choices,
            ],
        };
    }

    private static Material Heated(MotionProgram program, Material material) => material with
    {
        UsualC = new HeatLimits(
            program.Nozzle?.MostC ?? material.UsualC.NozzleC, program.Bed?.MostC ?? material.UsualC.BedC,
            program.Chamber?.MostC ?? material.UsualC.ChamberC),
        Needs = new HeatLimits(
            program.Nozzle?.MostC ?? material.Needs.NozzleC, program.Bed?.MostC ?? material.Needs.BedC,
            program.Chamber?.MostC ?? material.Needs.ChamberC),
    };

    private sealed record Outcome(TimeParts Time, MotionTimes Motion, BuildCycleResult Cycle, double MaterialMm3)
    {
        public double EnergyJ => Cycle.Energy?.TotalJ ?? 0;

        public static Outcome Of(MotionProgram program, MachineHeat heat, MotionTimes? known, CancellationToken cancel)
        {
            Machine machine = heat.Machine;
            MotionTimes motion = known ?? ProgramTiming.Time(program, machine, heat.Material.MeltRateFactor, cancel);
            PerKind moving = motion.MovingS;
            moving[PathKind.Travel] += motion.StandstillS - program.WaitS;
            double changes = (program.ToolChanges + program.FilamentChanges) * machine.Handling.MaterialChangeS;
            double material = program.Filament.NetMm * new Filament(machine.Extruder.FilamentMm).AreaMm2;
            BuildCycleResult cycle = BuildCycle.Simulate(
                heat, new BuildLoad(moving.Sum + program.WaitS + changes, Math.Max(0, material)));
            TimeParts time = new()
            {
                WarmUpS = machine.Handling.StartS + (cycle.WarmUpS ?? 0),
                MovingS = moving,
                WaitingS = program.WaitS,
                ChangesS = changes,
                ReleaseS = cycle.ReleaseS ?? 0,
            };
            return new Outcome(time, motion, cycle, material);
        }
    }
}
