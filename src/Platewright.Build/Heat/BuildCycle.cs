using Platewright.Build.Heat.Network;
using Platewright.Machines;

namespace Platewright.Build.Heat;

/// <summary>A whole build cycle as heat and energy see it: warm up, build, cool down until the part lets go.</summary>
public static class BuildCycle
{
    private const int BuildingPoints = 80, CoolingPoints = 60;

    private const double LongestCoolingS = 1e7;

    // A bed or chamber that falls this far below its need while building is told, K.
    private const double SagK = 1;

    /// <summary>Runs the cycle of one build on one machine.</summary>
    /// <param name="machine">The machine.</param>
    /// <param name="material">The material.</param>
    /// <param name="buildSeconds">From the first move to the last, s, not negative.</param>
    /// <param name="materialMm3">Material laid down in it, mm³, not negative.</param>
    /// <param name="roomC">Room temperature, −20 … 60 °C.</param>
    public static BuildCycleResult Simulate(
        Machine machine, Material material, double buildSeconds, double materialMm3,
        double roomC = MachineHeat.UsualRoomC) =>
        Simulate(new MachineHeat(machine, material, roomC), new BuildLoad(buildSeconds, materialMm3));

    /// <summary>Runs the cycle of one build on a machine whose warm-up may serve many.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Time or material is negative or not a number.</exception>
    public static BuildCycleResult Simulate(MachineHeat heat, BuildLoad load)
    {
        if (!(load is { Seconds: >= 0, MaterialMm3: >= 0 }) || !double.IsFinite(load.Seconds + load.MaterialMm3))
            throw new ArgumentOutOfRangeException(nameof(load), load, "time and material are finite and not negative");
        string[] notes = heat.Chamber.Sentence is { } sentence ? [sentence] : [];
        BuildCycleResult cold = new(heat.Reach, heat.Chamber.IsVented, [.. notes]);
        if (heat.Machine.Heating is not { } heating) return cold with { WarmUpS = 0, ReleaseS = 0 };
        if (heat.WarmUp is not { } warmUp) return cold;
        (StageRun building, StageRun cooling, bool released) = Run(heat, heating, warmUp, load);
        double whole = warmUp.Seconds + load.Seconds + cooling.Seconds;
        return cold with
        {
            Notes = [.. notes, .. Sags(heat, building)],
            WarmUpS = warmUp.Seconds,
            ReleaseS = released ? cooling.Seconds : null,
            Energy = new CycleEnergy(
                warmUp.EnergyJ, building.Run.EnergyJ, heating.MotorsW * load.Seconds, heating.ElectronicsW * whole),
            Hold = HoldPower.Of(heat, load, building),
            PeakW = Math.Max(warmUp.PeakW, load.Seconds > 0 ? building.PeakW : 0),
            CycleS = whole,
            ReleasedJ = cooling.Run.State[cooling.Machine.Room],
            Draw = () => [
                .. warmUp.Picture, .. building.Picture(warmUp.Seconds, BuildingPoints),
                .. cooling.Picture(warmUp.Seconds + load.Seconds, CoolingPoints),
            ],
        };
    }

    private static (StageRun Building, StageRun Cooling, bool Released) Run(
        MachineHeat heat, Heating heating, WarmUp warmUp, BuildLoad load)
    {
        PartBody? part = PartBody.Of(heat.Material, load);
        MachineNetwork working = heat.NetworkAt(heat.Settings, building: true, part);
        double workingW = heating.ElectronicsW + heating.MotorsW;
        StageRun building = StageRun.Start(CycleStage.Building, working, workingW, warmUp.Stage);
        building.Run.Run(load.Seconds);
        MachineNetwork resting = heat.NetworkAt(null, part: part);
        StageRun cooling = StageRun.Start(CycleStage.CoolingDown, resting, heating.ElectronicsW, building);
        return (building, cooling, Cool(heat, cooling));
    }

    // False where the room is too warm for the part ever to let go.
    private static bool Cool(MachineHeat heat, StageRun cooling)
    {
        int bed = cooling.Machine.Bed;
        if (bed < 0) return true;
        Goal release = new(bed, heat.Material.ReleaseC, Rising: false);
        if (heat.RoomC >= release.LevelC && !release.IsMet(cooling.Run.TemperatureC)) return false;
        return cooling.Run.Run(LongestCoolingS, release);
    }

    private static IEnumerable<string> Sags(MachineHeat heat, StageRun building)
    {
        MachineNetwork machine = building.Machine;
        HeatLimits needs = heat.Material.Needs;
        foreach ((string name, int node, double need, bool heated) in new[]
        {
            ("nozzle", machine.Nozzle, needs.NozzleC, true),
            ("bed", machine.Bed, needs.BedC, true),
            ("chamber", machine.ChamberAir, needs.ChamberC, heat.Machine.Heating?.Chamber is not null),
        })
        {
            if (node < 0 || !heated || building.Seconds <= 0) continue;
            double end = building.Run.TemperatureC[node];
            if (end < need - SagK)
                yield return $"While building the {name} falls to {end:0} °C; {heat.Material.Name} needs {need:0} °C.";
        }
    }
}
