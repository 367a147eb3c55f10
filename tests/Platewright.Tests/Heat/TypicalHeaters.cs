using Platewright.Geometry;
using Platewright.Machines;

namespace Platewright.Tests.Heat;

/// <summary>
/// Invented typical heaters for a machine by its size: common practice, no source. A bed of 4 mm aluminium under
/// 4 mm glass at 1 W/cm², a nozzle of 40 W, walls of 3 mm polycarbonate 60 mm around the build volume.
/// </summary>
internal static class TypicalHeaters
{
    /// <summary>J/(K·m²) of such a bed: aluminium, glass, and magnet, mat and carrier.</summary>
    public const double BedCapacityJKM2 = 2700 * 900 * 0.004 + 2500 * 800 * 0.004 + 9000;

    public static Heater Bed(double areaM2, double wattsPerCm2 = 1) =>
        new(wattsPerCm2 * areaM2 * 1e4, BedCapacityJKM2 * areaM2, areaM2);

    public static Heater Nozzle { get; } = new(40, 25, 0.0045);

    /// <summary>A square bed in an open frame, with what the supply leaves for it up to 1 W/cm².</summary>
    public static Machine OpenFrame(double bedSideM, double supplyW, double electronicsW = 12, double motorsW = 15)
    {
        double area = bedSideM * bedSideM;
        double power = Math.Min(area * 1e4, supplyW - Nozzle.PowerW - electronicsW - motorsW);
        return new Machine
        {
            Name = "open frame",
            BuildVolume = new BoxVolume(bedSideM * 1e3, bedSideM * 1e3, bedSideM * 1e3),
            Enclosed = false,
            Heating = new Heating
            {
                Bed = Bed(area) with { PowerW = power },
                Nozzle = Nozzle,
                SupplyW = supplyW,
                ElectronicsW = electronicsW,
                MotorsW = motorsW,
            },
        };
    }

    public static Machine On(Machine machine)
    {
        if (machine.Heating is not null) return machine;
        Vec3 size = SizeMm(machine.BuildVolume);
        double area = (size.X + 20) * (size.Y + 20) / 1e6;
        bool heated = machine.HeatsTo?.ChamberC > 50;
        Heating heating = new()
        {
            Bed = Bed(area),
            Nozzle = Nozzle,
            ElectronicsW = 12,
            MotorsW = 15,
            Chamber = heated ? new(300, 400, 0.1) : null,
            Enclosure = machine.Enclosed == true ? new(size.X + 120, size.Y + 120, size.Z + 120, 3) : null,
        };
        double all = heating.Bed!.PowerW + heating.Nozzle!.PowerW + (heating.Chamber?.PowerW ?? 0);
        return machine with { Heating = heating with { SupplyW = all + 30 } };
    }

    private static Vec3 SizeMm(BuildVolume volume) => volume switch
    {
        BoxVolume b => new Vec3(b.WidthMm, b.DepthMm, b.HeightMm),
        CylinderVolume c => new Vec3(c.DiameterMm, c.DiameterMm, c.HeightMm),
        _ => throw new NotSupportedException($"{volume}"),
    };
}
