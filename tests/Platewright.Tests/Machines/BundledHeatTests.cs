using Platewright.Build.Heat;
using Platewright.Machines;

namespace Platewright.Tests.Machines;

/// <summary>The bundled machines against the heat model: what they claim to heat to is reached, and in the usual time.</summary>
public sealed class BundledHeatTests
{
    public static TheoryData<string> Bundled() => [.. MachineCatalog.Bundled.Select(m => m.Id)];

    [Theory]
    [MemberData(nameof(Bundled))]
    public void HeatsTo_IsReachedByTheSteadyStateOfTheHeaters(string id)
    {
        Machine machine = MachineCatalog.Find(id);
        HeatLimits claim = machine.HeatsTo!;
        Material hottest = new("hottest", claim, 0, 0, "test");

        HeatReach reach = HeatReach.Of(machine with { HeatsTo = null }, hottest);

        Assert.True(reach.Reaches, string.Join(" ", reach.Sentences));
        Assert.All(reach.Zones.Where(z => z.NeededC > 0), z => Assert.NotEqual(ReachSource.Unknown, z.Source));
    }

    [Theory]
    [MemberData(nameof(Bundled))]
    public void WarmUp_OfTheBed_TakesTheUsualMinutes(string id)
    {
        // Beds of 0.2 m at about 1 W/cm²: to 60 °C 1.5 to 3 min, to 100 °C 4 to 8 min; larger ones somewhat longer. Nozzles 1 to
        // 3 min. Common practice, from memory.
        Machine machine = MachineCatalog.Find(id);
        (double least, double most) = (1.4, machine.BuildVolume.HeightMm > 400 ? 4 : 3);
        Assert.InRange(BedMinutes(60), least, most);
        if (machine.HeatsTo!.BedC >= 100) Assert.InRange(BedMinutes(100), 4, machine.BuildVolume.HeightMm > 400 ? 10 : 8);

        WarmUp to200 = new MachineHeat(machine, new("probe", new(200, 60, 0), 0, 0, "test")).WarmUp!;
        Assert.InRange(to200.NozzleS!.Value / 60, 0.8, 3);

        double BedMinutes(double toC) =>
            new MachineHeat(machine, new("probe", new(200, toC, 0), 0, 0, "test")).WarmUp!.BedS!.Value / 60;
    }

    [Theory]
    [InlineData("PLA", 7)]
    [InlineData("PETG", 6)]
    [InlineData("TPU", 7)]
    [InlineData("ABS", 3)]
    [InlineData("PC", 1)]
    public void Materials_AreMadeByTheMachinesOfTheirClass(string material, int machines) => Assert.Equal(
        machines, MachineCatalog.Bundled.Count(m => HeatReach.Of(m, MaterialCatalog.Find(material)!).Reaches));
}
