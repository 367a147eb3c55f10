namespace Platewright.Machines;

internal static partial class TypicalValues
{
    // A bed of this edge or less gets about 1 W/cm², a larger one less, m².
    private const double SmallSurfaceM2 = 0.06;

    private const double Cm2PerM2 = 1e4;

    private const double BesideBedM = 0.12;

    // 3 mm of aluminium store 7300 J/(K·m²), 4 mm of glass 8000, 0.8 mm of steel 3000 (density × specific heat).
    private const string BedPlates = "3 mm aluminium, and mostly a sheet of glass or steel on it";

    private const string Polycarbonate = "polycarbonate or acrylic: Crawford, table 1.8";

    // Idle 5 … 15 W, electronics and motors together 15 … 35 W, chamber heaters 100 … 400 W.
    private static IEnumerable<KeyValuePair<string, Func<MachineClass, TypicalValue>>> Heat()
    {
        yield return new("heating.supply_w", kind =>
        {
            TypicalValue bed = BedPower(kind);
            const double rest = 100;
            return TypicalValue.Of(bed.Value + rest, bed.Range.Low + rest, bed.Range.High + rest);
        });
        yield return Same("heating.electronics_w", TypicalValue.Of(10, 5, 18, FromMemory));
        yield return Same("heating.motors_w", TypicalValue.Of(13, 8, 20, FromMemory));
        yield return new("heating.bed.power_w", BedPower);
        yield return ByArea("heating.bed.capacity_j_k", 20_000, 10_000, 32_000, BedPlates);
        yield return ByArea("heating.bed.area_m2", 1, 1, 1.25);
        yield return Same("heating.nozzle.power_w", Typical(40, 30, 60));
        yield return Same(
            "heating.nozzle.capacity_j_k",
            TypicalValue.Of(HeaterDefaults.NozzleCapacityJK, 15, 40));
        yield return Same("heating.nozzle.area_m2", TypicalValue.Of(HeaterDefaults.NozzleAreaM2, 0.0025, 0.0065));
        yield return Same("heating.chamber.power_w", TypicalValue.Of(200, 100, 400, FromMemory));
        yield return Same("heating.chamber.capacity_j_k", TypicalValue.Of(HeaterDefaults.ChamberCapacityJK, 150, 900));
        yield return Same("heating.enclosure.wall_mm", Typical(3, 1.5, 5));
        yield return Same("heating.enclosure.wall_conductivity_w_mk", TypicalValue.Of(0.2, 0.17, 0.25, Polycarbonate));
        yield return Same(
            "heating.enclosure.wall_capacity_j_m3k", TypicalValue.Of(1_440_000, 1_400_000, 1_800_000, Polycarbonate));
        yield return new("heating.enclosure.frame_capacity_j_k", kind =>
        {
            // About a cube around the bed and the room that drives take beside it.
            double side = (Math.Sqrt(kind.SurfaceM2) + BesideBedM) * 1e3, usual = Enclosure.UsualFrameJK(side, side, side);
            const double least = 0.4, most = 2;
            return TypicalValue.Of(usual, least * usual, most * usual);
        });
        yield return Same("heating.enclosure.air_changes_per_h", Typical(1, 0.2, 6));
    }

    private static TypicalValue BedPower(MachineClass kind)
    {
        (double value, double low, double high) = kind.SurfaceM2 <= SmallSurfaceM2 ? (0.75, 0.45, 1.1) : (0.6, 0.35, 0.9);
        double area = kind.SurfaceM2 * Cm2PerM2;
        return TypicalValue.Of(value * area, low * area, high * area, FromMemory);
    }
}
