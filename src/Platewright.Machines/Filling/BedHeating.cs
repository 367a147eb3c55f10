namespace Platewright.Machines;

/// <summary>
/// A bed as one lump: C·dT/dt = P − UA·(T − T_room), so that t = −(C/UA)·ln[(T_ss − T)/(T_ss − T_room)] with
/// T_ss = T_room + P/UA. It links what a person sees (watts and minutes) with what a bed is (J/K).
/// </summary>
public static class BedHeating
{
    /// <summary>Where a bed starts, °C.</summary>
    public const double RoomC = 22;

    /// <summary>
    /// What both faces give off together per area of one, W/(m²·K): still air above and below, and radiation. The
    /// handbook correlations give 22 at 60 °C and 27 at 100 °C for beds of 0.1 to 0.4 m.
    /// </summary>
    public const double LossWM2K = 25;

    /// <summary>Seconds from the room to a temperature; infinity where it is never reached.</summary>
    /// <param name="powerW">Heater, W.</param>
    /// <param name="capacityJK">Heat capacity, J/K.</param>
    /// <param name="areaM2">One face, m².</param>
    /// <param name="toC">Above the room's, °C.</param>
    public static double SecondsTo(double powerW, double capacityJK, double areaM2, double toC) =>
        capacityJK * SecondsPerCapacity(powerW, areaM2, toC);

    /// <summary>Heat capacity, J/K, of a bed that takes so long; 0 where that power never gets there.</summary>
    public static double CapacityFor(double powerW, double areaM2, double toC, double seconds) =>
        seconds / SecondsPerCapacity(powerW, areaM2, toC);

    /// <summary>Power, W, that takes so long: found by halving between what just holds the heat and what has no losses
    /// worth speaking of.</summary>
    public static double PowerFor(double capacityJK, double areaM2, double toC, double seconds)
    {
        double rise = toC - RoomC;
        double low = LossWM2K * areaM2 * rise, high = low + capacityJK * rise / seconds;
        const int halvings = 50;
        for (int i = 0; i < halvings; i++)
        {
            double middle = (low + high) / 2;
            if (SecondsTo(middle, capacityJK, areaM2, toC) > seconds) low = middle;
            else high = middle;
        }
        return high;
    }

    private static double SecondsPerCapacity(double powerW, double areaM2, double toC)
    {
        double loss = LossWM2K * areaM2, rise = toC - RoomC, steadyRise = powerW / loss;
        return steadyRise <= rise ? double.PositiveInfinity : -Math.Log((steadyRise - rise) / steadyRise) / loss;
    }
}
