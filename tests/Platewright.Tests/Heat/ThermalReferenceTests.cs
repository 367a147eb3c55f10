using Platewright.Build.Heat;
using Platewright.Build.Heat.Network;
using Platewright.Tests.Motion;

namespace Platewright.Tests.Heat;

/// <summary>
/// Every thermal case: handbook examples, and closed solutions reached through the network that estimates use.
/// </summary>
public sealed class ThermalReferenceTests
{
    public static TheoryData<string> Ids() => PhysicsCase.Ids(
        "thermal/convection", "thermal/lumped", "thermal/chamber", "thermal/panel", "thermal/radiation");

    [Theory]
    [MemberData(nameof(Ids))]
    public void Thermal_ReferenceCase_IsMet(string id)
    {
        var c = PhysicsCase.OrSkip(id);
        switch (c.Group)
        {
            case "thermal/convection" when c.Has("width_m"): Duct(c); break;
            case "thermal/convection": Plate(c); break;
            case "thermal/lumped" when c.Has("factor"): Scaling(c); break;
            case "thermal/lumped" when c.Has("tau_s"): Bead(c); break;
            case "thermal/lumped" when c.Has("UA_W_K"): LumpedCases.Bed(c); break;
            case "thermal/lumped": LumpedCases.Plate(c); break;
            case "thermal/chamber": ChamberCases.Check(c); break;
            case "thermal/panel" when c.Has("side_m"): StoredInAir(c); break;
            case "thermal/panel": Wall(c); break;
            case "thermal/radiation":
                c.CheckValues("h_rad", Radiation.Linearised(c.In("emissivity"), c.In("T_mean_K")));
                break;
            default: Assert.Skip($"{id}: a group this test does not know: {c.Group}"); break;
        }
    }

    private static double Ra(PhysicsCase c, double length) => Convection.Rayleigh(
        c.In("beta_1_K"), c.In("dT_K"), length, c.In("nu_m2_s"), c.In("alpha_m2_s"), c.In("g"));

    private static void Plate(PhysicsCase c)
    {
        double ra = Ra(c, c.In("length_m")), pr = c.In("Pr");
        string title = c.Title.ToLowerInvariant();
        double nu = title.Contains("side up") ? Convection.UpwardLaminar(ra)
            : title.Contains("side down") ? Convection.Downward(ra)
            : c.Source.Contains("Squire") ? Convection.VerticalIntegral(ra, pr)
            : Convection.Vertical(ra, pr);
        double h = nu * c.In("k_W_mK") / c.In("length_m");
        c.CheckValues("Ra", ra);
        c.CheckValues("Nu", nu);
        c.CheckValues("h_W_m2K", h);
        c.CheckValues("Q_W", h * c.In("area_m2") * c.In("dT_K"));
        // The joined form that estimates use stays within the 8 % between the two of the book, and 7 % of joining.
        if (title.Contains("side up")) Assert.InRange(Convection.Upward(ra) / nu, 1, 1.16);
    }

    private static void Duct(PhysicsCase c)
    {
        double pr = c.In("Pr"), k = c.In("k_W_mK"), height = c.In("height_m"), scale = c.In("plate_length_scale_m");
        double side = Convection.VerticalLaminar(Ra(c, height), pr) * k / height;
        double top = Convection.UpwardTurbulent(Ra(c, scale)) * k / scale;
        double bottom = Convection.Downward(Ra(c, scale)) * k / scale;
        c.CheckValues("h_side", side);
        c.CheckValues("h_top", top);
        c.CheckValues("h_bottom", bottom);
        c.CheckValues("loss_W_per_m", (2 * side * height + (top + bottom) * c.In("width_m")) * c.In("dT_K"));
    }

    private static void Bead(PhysicsCase c)
    {
        double diameter = 6 * c.In("h") * c.In("tau_s") / (c.In("rho") * c.In("cp"));
        double area = Math.PI * diameter * diameter;
        double capacity = c.In("rho") * c.In("cp") * Math.PI * Math.Pow(diameter, 3) / 6;
        var run = new NetworkRun(Lumped.Of(capacity, c.In("T0_C"), c.In("Tinf_C"), new LinearLaw(c.In("h") * area)));
        Assert.True(run.Run(1e6, new Goal(0, c.In("T_C"), true)));
        c.CheckValues("diameter_m", diameter);
        c.CheckValues("time_s", run.TimeS);
    }

    private static void Scaling(PhysicsCase c)
    {
        var b = PhysicsCase.OrSkip(c.Input.GetProperty("base").GetString()!);
        double f = c.In("factor");
        NetworkRun small = LumpedCases.BedRun(b, 1), large = LumpedCases.BedRun(b, f);
        Assert.True(small.Run(1e7, new Goal(0, b.In("target_C"), true)));
        Assert.True(large.Run(1e7, new Goal(0, b.In("target_C"), true)));
        c.CheckValues("time_ratio", large.TimeS / small.TimeS);
        c.CheckValues("energy_ratio", large.EnergyJ / small.EnergyJ);
        small.Run(small.TimeS + 1);
        large.Run(large.TimeS + 1);
        c.CheckValues("hold_ratio", large.PowerW[0] / small.PowerW[0]);
    }

    private static void Wall(PhysicsCase c)
    {
        Panel panel = new(c.In("thickness_m"), c.In("k"), c.In("h_in"), c.In("h_out"));
        c.CheckValues("U", panel.TransmittanceWM2K);
        c.CheckValues("heat_W", panel.TransmittanceWM2K * c.In("area_m2") * (c.In("T_in_C") - c.In("T_out_C")));
        c.CheckValues("panel_share", panel.OwnShare);
    }

    private static void StoredInAir(PhysicsCase c)
    {
        double capacity = c.In("rho") * c.In("cp") * Math.Pow(c.In("side_m"), 3);
        c.CheckValues("C_J_K", capacity);
        c.CheckValues("stored_kJ", capacity * c.In("dT_K") / 1e3);
        // The table of air that the chamber's capacity is taken from says the same.
        var air = Air.At(300);
        Assert.InRange(air.DensityKgM3 * air.SpecificHeatJKgK / (c.In("rho") * c.In("cp")), 0.99, 1.01);
    }
}
