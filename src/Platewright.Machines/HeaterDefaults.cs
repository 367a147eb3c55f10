namespace Platewright.Machines;

/// <summary>
/// What stands in for figures of heaters that a machine file leaves out; docs/machine-file.md states them. Common
/// practice, no source.
/// </summary>
public static class HeaterDefaults
{
    /// <summary>A block, a nozzle and a cartridge: about 30 g of aluminium and brass, J/K.</summary>
    public const double NozzleCapacityJK = 25;

    /// <summary>Holding 210 °C in a room then takes 10 to 25 W, m².</summary>
    public const double NozzleAreaM2 = 0.004;

    /// <summary>Fins and duct of an air heater: about 0.4 kg of aluminium, J/K.</summary>
    public const double ChamberCapacityJK = 350;
}
