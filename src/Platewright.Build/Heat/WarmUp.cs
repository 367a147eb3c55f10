using System.Collections.Immutable;
using Platewright.Build.Heat.Network;
using Platewright.Machines;

namespace Platewright.Build.Heat;

/// <summary>From room temperature to ready.</summary>
/// <param name="Seconds">Until nozzle, bed and, where the material needs it, the chamber are ready at once, s.</param>
/// <param name="NozzleS">When the nozzle first was, s; null without a described heater.</param>
/// <param name="BedS">When the bed first was, s; null without a described heater.</param>
/// <param name="ChamberS">When the chamber first was, s; null where it is not waited for.</param>
/// <param name="EnergyJ">Electrical energy of the heaters, J.</param>
/// <param name="PeakW">Greatest power of the whole machine, W.</param>
/// <param name="Picture">Temperatures and power over it.</param>
public sealed record WarmUp(
    double Seconds, double? NozzleS, double? BedS, double? ChamberS, double EnergyJ, double PeakW,
    ImmutableArray<CyclePoint> Picture)
{
    // A chamber that the bed alone warms counts as warm at this share of its air's last rise, or at the need if that is
    // less: nobody waits for the end of an exponential. And any chamber is soaked only once its walls and frame have
    // made this share of theirs, for a fast reading of the air is not a warm chamber. Common practice, no source.
    private const double WarmShare = 0.9, SoakedShare = 2.0 / 3;

    private const int PicturePoints = 60;

    // Beyond any real machine; what never gets there was already told by the steady state.
    private const double LongestS = 1e7;

    internal StageRun Stage { get; private init; } = null!;

    internal static WarmUp? Of(MachineHeat heat)
    {
        if (!heat.Reach.Reaches || heat.Machine.Heating is not { } heating) return null;
        MachineNetwork machine = heat.NetworkAt(heat.Settings);
        StageRun stage = StageRun.Start(CycleStage.WarmUp, machine, heating.ElectronicsW);
        Goal? nozzle = heating.Nozzle is null ? null : new(machine.Nozzle, heat.Settings.NozzleC, true);
        Goal? bed = heating.Bed is null ? null : new(machine.Bed, heat.Settings.BedC, true);
        Goal[] chamber = Soak(heat, machine);
        Goal[] goals = [.. new[] { nozzle, bed }.OfType<Goal>(), .. chamber];
        if (goals.Length > 0 && !stage.Run.Run(LongestS, goals))
            throw new InvalidOperationException("Bug in Platewright: a reachable temperature was not reached.");
        return new WarmUp(
            stage.Seconds, FirstMet(stage, nozzle), FirstMet(stage, bed), chamber.Max(g => FirstMet(stage, g)),
            stage.Run.EnergyJ, stage.PeakW, stage.Picture(0, PicturePoints))
        {
            Stage = stage,
        };
    }

    private static Goal[] Soak(MachineHeat heat, MachineNetwork machine)
    {
        double need = heat.Material.Needs.ChamberC, room = heat.RoomC;
        if (machine.ChamberAir < 0 || heat.Settings.ChamberC <= room) return [];
        Heating? heating = heat.Machine.Heating;
        if (heating?.Chamber is null && heating?.Bed is null) return [];
        double[] end = SteadyState.Of(machine.Network).TemperatureC;
        double air = heating.Chamber is not null
            ? heat.Settings.ChamberC
            : Math.Min(need, room + WarmShare * (end[machine.ChamberAir] - room));
        double walls = room + SoakedShare * (end[machine.WallInside] - room);
        return [new Goal(machine.ChamberAir, air, true), new Goal(machine.WallInside, walls, true)];
    }

    private static double? FirstMet(StageRun stage, Goal? goal)
    {
        if (goal is null) return null;
        if (goal.IsMet(stage.StartTemperatureC)) return 0;
        double[] temperature = new double[stage.StartTemperatureC.Length];
        foreach (RunStep step in stage.Run.Steps)
        {
            stage.Run.At(step, step.EndS, temperature);
            if (goal.IsMet(temperature)) return step.EndS;
        }
        return null;
    }
}
