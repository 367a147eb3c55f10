using Platewright.Build.Heat;
using Platewright.Build.Motion;

namespace Platewright.Tests.Motion;

/// <summary>Beads and filament against the reference file.</summary>
public sealed class ExtrusionReferenceTests
{
    public static TheoryData<string> Ids() =>
        PhysicsCase.Ids("extrusion/bead", "extrusion/filament", "extrusion/flow", "extrusion/melt");

    [Theory]
    [MemberData(nameof(Ids))]
    public void Extrusion_ReferenceCase_HasItsValues(string id)
    {
        PhysicsCase c = PhysicsCase.OrSkip(id);
        c.CheckAll(key => key switch
        {
            "area_mm2" when c.Has("width_mm") => Bead.AreaMm2(c.In("width_mm"), c.In("layer_mm")),
            "area_mm2" or "mm3_per_mm" => new Filament(c.In("diameter_mm")).AreaMm2,
            "filament_mm_per_mm" =>
                Bead.AreaMm2(c.In("width_mm"), c.In("layer_mm")) / new Filament(c.In("filament_mm")).AreaMm2,
            "touching_pitch_mm" => Bead.TouchingPitchMm(c.In("width_mm"), c.In("layer_mm")),
            "over_rectangle" => Bead.AreaMm2(c.In("width_mm"), c.In("layer_mm")) / (c.In("width_mm") * c.In("layer_mm")),
            "length_m" => new Filament(c.In("diameter_mm")).LengthMm(c.In("mass_kg") * 1000, c.In("density_g_cm3")) / 1000,
            "g_per_m" => new Filament(c.In("diameter_mm")).MassG(1000, c.In("density_g_cm3")),
            "rate_mm3_s" => RateOfMove(c),
            "power_W" => Melt.PowerW(
                c.In("rate_mm3_s"), c.In("density_kg_m3") / 1000, c.In("cp_J_kgK"), c.In("feed_C"), c.In("nozzle_C")),
            _ => null,
        });
    }

    /// <summary>The published rates count the bead as a rectangle; so does the move planned here.</summary>
    private static double RateOfMove(PhysicsCase c)
    {
        double area = c.In("width_mm") * c.In("layer_mm"), length = 1e6;
        var limits = new Platewright.Machines.MotionLimits(1e6, 1e9, 0.05);
        var move = new Move(new(length, 0, 0), c.In("speed_mm_s"), area, 0, PathKind.Wall);
        MotionTimes times = new MotionPlanner().Plan(default, [move], limits);
        return times.MaterialMm3[PathKind.Wall] / times.MovingS[PathKind.Wall];
    }
}
