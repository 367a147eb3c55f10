namespace Platewright.Build.Heat;

/// <summary>What a machine is doing within a build cycle.</summary>
public enum CycleStage
{
    WarmUp,
    Building,
    CoolingDown,
}

/// <summary>One moment of a build cycle. Temperatures in °C, null for what is not there or not described.</summary>
/// <param name="TimeS">Since the heaters were switched on, s.</param>
/// <param name="Stage">What the machine is doing.</param>
/// <param name="NozzleC">Nozzle.</param>
/// <param name="BedC">Bed.</param>
/// <param name="ChamberC">Air of a closed chamber.</param>
/// <param name="PartC">The part, mean over its body.</param>
/// <param name="PowerW">Everything the machine draws, W: mean over a thermostat's switching.</param>
public readonly record struct CyclePoint(
    double TimeS, CycleStage Stage, double? NozzleC, double? BedC, double? ChamberC, double? PartC, double PowerW);
