using Platewright.Machines;

namespace Platewright.Build.Heat;

/// <summary>What the heaters draw while building, means over the build, W.</summary>
/// <param name="NozzleW">Nozzle, heat into the melt included.</param>
/// <param name="BedW">Bed.</param>
/// <param name="ChamberW">Chamber.</param>
/// <param name="MeltW">Heat that the filament takes along: part of <paramref name="NozzleW"/>.</param>
public sealed record HoldPower(double NozzleW, double BedW, double ChamberW, double MeltW)
{
    public double TotalW => NozzleW + BedW + ChamberW;

    internal static HoldPower Of(MachineHeat heat, BuildLoad load, StageRun building)
    {
        Material m = heat.Material;
        double melt = Melt.PowerW(
            load.MeanFlowMm3S, m.DensityGCm3, m.SpecificHeatJKgK, heat.RoomC, heat.Settings.NozzleC);
        return new HoldPower(
            Mean(building, building.Machine.Nozzle), Mean(building, building.Machine.Bed),
            Mean(building, building.Machine.ChamberAir), heat.Machine.Heating?.Nozzle is null ? 0 : melt);
    }

    private static double Mean(StageRun building, int node)
    {
        int nodes = building.Machine.Network.Nodes.Length;
        for (int h = 0; h < building.Machine.Network.Heaters.Length; h++)
            if (building.Machine.Network.Heaters[h].Node == node && node >= 0 && building.Seconds > 0)
                return building.Run.State[nodes + h] / building.Seconds;
        return 0;
    }
}
