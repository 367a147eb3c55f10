using Platewright.Machines;

namespace Platewright.Build.Heat;

/// <summary>What a machine is doing, as far as heat goes.</summary>
/// <param name="RoomC">Room temperature, °C.</param>
/// <param name="SetC">Settings of the thermostats, °C; null with all heaters off.</param>
/// <param name="Closed">Whether the chamber is closed.</param>
/// <param name="OtherW">What electronics and motors take from the supply, W.</param>
internal sealed record Situation(double RoomC, HeatLimits? SetC, bool Closed, double OtherW)
{
    /// <summary>Moving and extruding: the air is stirred, and the part grows.</summary>
    public bool Building { get; init; }

    public PartBody? Part { get; init; }
}

/// <summary>The finished part as a body: its size is that of a cube filled to a half, its material given.</summary>
/// <param name="CapacityJK">Heat capacity when finished, J/K.</param>
/// <param name="SideM">Side of the cube, m.</param>
/// <param name="GrowsForS">How long it grows, s.</param>
internal sealed record PartBody(double CapacityJK, double SideM, double GrowsForS)
{
    // Share of a part's outline volume that is material: common practice, no source.
    private const double Filled = 0.5;

    // What weighs less than 10 mg stores no heat that anything could feel.
    private const double LightestKg = 1e-5;

    /// <summary>Four sides and the top, m².</summary>
    public double SurfaceM2 => 5 * SideM * SideM;

    public static PartBody? Of(Material material, BuildLoad load)
    {
        double kg = load.MaterialMm3 * material.DensityGCm3 * 1e-6;
        if (kg < LightestKg || load.Seconds <= 0) return null;
        double side = Math.Cbrt(load.MaterialMm3 / Filled) / 1e3;
        return new PartBody(kg * material.SpecificHeatJKgK, side, load.Seconds);
    }
}
