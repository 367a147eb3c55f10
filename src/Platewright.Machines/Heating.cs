namespace Platewright.Machines;

/// <summary>
/// The heaters and what draws power besides. Null parts are not there, or not stated: nothing is guessed in silence.
/// </summary>
public sealed record Heating
{
    public Heater? Bed { get; init; }

    public Heater? Nozzle { get; init; }

    /// <summary>A heater of the chamber's air; a chamber may also be warmed by the bed alone.</summary>
    public Heater? Chamber { get; init; }

    /// <summary>What the supply can give all heaters, motors and electronics together, W; null for no limit.</summary>
    public double? SupplyW { get; init; }

    /// <summary>Drawn whenever the machine is on: boards, display, fans, W.</summary>
    public double ElectronicsW { get; init; }

    /// <summary>Drawn by the motors while building, W.</summary>
    public double MotorsW { get; init; }

    public Enclosure? Enclosure { get; init; }
}

/// <summary>One heater with what it heats.</summary>
/// <param name="PowerW">Electrical power when fully on, W.</param>
/// <param name="CapacityJK">Heat capacity of what it heats, J/K: mass × specific heat.</param>
/// <param name="AreaM2">
/// Surface that gives heat to the air, m²; for a bed one face; 0 for a chamber's heater, which sits in the air.
/// </param>
public sealed record Heater(double PowerW, double CapacityJK, double AreaM2);

/// <summary>Walls around the build volume.</summary>
/// <param name="WidthMm">Inner width, mm.</param>
/// <param name="DepthMm">Inner depth, mm.</param>
/// <param name="HeightMm">Inner height, mm.</param>
/// <param name="WallMm">Thickness of the walls, mm.</param>
public sealed record Enclosure(double WidthMm, double DepthMm, double HeightMm, double WallMm)
{
    /// <summary>Conductivity of the walls, W/(m·K); 0.2 is polycarbonate (Crawford, table 1.8).</summary>
    public double WallConductivityWMK { get; init; } = 0.2;

    /// <summary>Heat capacity of the walls per volume, J/(m³·K): density × specific heat.</summary>
    public double WallCapacityJM3K { get; init; } = 1200 * 1200;

    /// <summary>
    /// Heat capacity of the frame, drives and cables within the walls, J/K: mass × specific heat. They warm up with the
    /// walls, and take far more than the air. Without a figure 100 kJ/K for each m³ inside: common practice, no source.
    /// </summary>
    public double FrameCapacityJK { get; init; } = UsualFrameJK(WidthMm, DepthMm, HeightMm);

    /// <summary>Air exchanged with the room through gaps or a fan, changes per hour.</summary>
    public double AirChangesPerHour { get; init; } = 1;

    /// <summary>True where a lid or door may be opened so that the chamber stays near room temperature.</summary>
    public bool CanBeVented { get; init; } = true;

    internal static double UsualFrameJK(double widthMm, double depthMm, double heightMm)
    {
        const double JoulesPerKelvinAndM3 = 100_000, Mm3PerM3 = 1e9;
        return JoulesPerKelvinAndM3 * widthMm * depthMm * heightMm / Mm3PerM3;
    }
}
