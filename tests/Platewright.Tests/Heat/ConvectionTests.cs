using Platewright.Build.Heat;
using Platewright.Build.Heat.Network;

namespace Platewright.Tests.Heat;

public sealed class ConvectionTests
{
    [Fact]
    public void AirAt_RowsOfTheTable_GiveThem()
    {
        // Incropera & DeWitt, table A.4.
        Assert.Equal(15.89e-6, Air.At(300).ViscosityM2S, 1e-12);
        Assert.Equal(0.0300, Air.At(350).ConductivityWMK, 1e-12);
        Assert.Equal(0.5 * (0.0263 + 0.0300), Air.At(325).ConductivityWMK, 1e-12);
        // 22.5e-6 m²/s at 300 K in the same table.
        Assert.Equal(22.5e-6, Air.At(300).DiffusivityM2S, 0.05e-6);
    }

    [Fact]
    public void VerticalInAir_PrandtlOfAir_IsChurchillChu()
    {
        for (double pr = 0.68; pr <= 0.73; pr += 0.005)
            foreach (double ra in new[] { 1.0, 1e4, 1e7, 1e10 })
                Assert.Equal(1, Convection.VerticalInAir(ra, pr) / Convection.Vertical(ra, pr), 2e-4);
    }

    [Fact]
    public void Upward_AnyRayleigh_RisesWithoutAJumpAboveBothForms()
    {
        double last = 0;
        for (double ra = 1e3; ra < 1e11; ra *= 1.05)
        {
            double nu = Convection.Upward(ra);
            double greater = Math.Max(Convection.UpwardLaminar(ra), Convection.UpwardTurbulent(ra));
            Assert.InRange(nu / greater, 1, 1.0718);
            Assert.True(nu > last);
            last = nu;
        }
    }

    [Theory]
    [InlineData(Facing.Up)]
    [InlineData(Facing.Down)]
    [InlineData(Facing.Sideways)]
    public void ConvectionLaw_HotOrColdSurface_MirrorsWithItsFacing(Facing facing)
    {
        ConvectionLaw law = new(1, 0.1, facing);
        Facing other = facing switch { Facing.Up => Facing.Down, Facing.Down => Facing.Up, _ => facing };
        ConvectionLaw mirrored = law with { Facing = other };
        Assert.Equal(law.HeatW(80, 30), -mirrored.HeatW(30, 80), 1e-9);
        Assert.Equal(0, law.HeatW(40, 40));
        (double from, double to) = law.Slopes(80, 30);
        Assert.Equal((law.HeatW(80.01, 30) - law.HeatW(79.99, 30)) / 0.02, from, 1e-3);
        Assert.Equal((law.HeatW(80, 30.01) - law.HeatW(80, 29.99)) / 0.02, to, 1e-3);
    }

    [Fact]
    public void Stirring_FasterAir_TakesMoreHeat()
    {
        ConvectionLaw still = new(0.04, 0.05, Facing.Up);
        ConvectionLaw stirred = still with { StirringMS = 0.3, StreamLengthM = 0.2 };
        Assert.True(stirred.HeatW(60, 22) > still.HeatW(60, 22));
        // Incropera ex. 7.1: air at 10 m/s and 437 K over 0.5 m of plate, Re 9597, Nu 57.4 (ν 5.21e-4 m²/s, Pr 0.687).
        Air thin = new(0, 0, 0.0364, 5.21e-4, 0.687);
        Assert.Equal(57.4, Convection.Stream(10, 0.5, thin), 0.1);
    }

    [Fact]
    public void Radiation_SmallDifference_IsTheLinearisedForm()
    {
        double mean = 60;
        double exact = Radiation.FluxWM2(0.9, mean + 0.5, mean - 0.5);
        Assert.Equal(Radiation.Linearised(0.9, mean + Air.KelvinOffset), exact, 1e-4);
    }
}
