using Platewright.Formats.Toml;
using Platewright.Machines;

namespace Platewright.Tests.Machines;

public sealed class MachineCatalogTests
{
    [Fact]
    public void Bundled_AreSevenGenericsFromSmallToLarge()
    {
        Assert.Equal(
            [
                "generic-105-open", "generic-165-open", "generic-210-enclosed", "generic-245-round", "generic-265-open",
                "generic-330-enclosed", "generic-440-enclosed",
            ],
            MachineCatalog.Bundled.Select(m => m.Id));
        Assert.All(MachineCatalog.Bundled, m => Assert.True(m.Generic));
        Assert.All(MachineCatalog.Bundled, m => Assert.StartsWith("generic ", m.Name, StringComparison.Ordinal));
        Assert.All(MachineCatalog.Bundled, m => Assert.Contains("Invented", m.Note!, StringComparison.Ordinal));
        Assert.All(MachineCatalog.Bundled, m => Assert.NotNull(m.HeatsTo));
    }

    [Fact]
    public void Bundled_StateWhatAnEstimateNeedsAndHowFarTheirClassDiffers() => Assert.All(MachineCatalog.Bundled, m =>
    {
        Assert.NotNull(m.Motion);
        Assert.NotNull(m.Extruder.MeltRateMm3S);
        Assert.True(m.Handling.StartS > 0);
        Heating heating = m.Heating!;
        Assert.NotNull(heating.Bed);
        Assert.NotNull(heating.Nozzle);
        Assert.Equal(m.Enclosed is true, heating.Enclosure is not null);
        // Bed and nozzle together with the rest must not exceed what the supply gives: none of them is throttled.
        Assert.True(heating.Bed.PowerW + heating.Nozzle.PowerW + heating.ElectronicsW + heating.MotorsW <= heating.SupplyW);
        // About 1 W/cm² on small beds, less on large ones: common practice, no source.
        Assert.InRange(heating.Bed.PowerW / (heating.Bed.AreaM2 * 1e4), 0.4, 1.1);
        Assert.Contains("motion.acceleration_mm_s2", m.Ranges.Keys);
    });

    [Fact]
    public void Bundled_OnlyTheTwoLargestHaveAHeatedChamber() => Assert.Equal(
        ["generic-330-enclosed", "generic-440-enclosed"],
        MachineCatalog.Bundled.Where(m => m.Heating!.Chamber is not null).Select(m => m.Id));

    [Theory]
    [InlineData("generic-210-enclosed")]
    [InlineData("Generic 210 Enclosed")]
    public void Find_ByIdOrName_CaseAside(string name) =>
        Assert.Equal("generic 210 enclosed", MachineCatalog.Find(name).Name);

    [Fact]
    public void Find_Unknown_SuggestsTheNearest()
    {
        var refused = Assert.Throws<DescriptionException>(() => MachineCatalog.Find("generic-210-enclosd"));
        Assert.Contains("Did you mean \"generic-210-enclosed\"?", refused.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Find_MissingFile_SaysSo()
    {
        var refused = Assert.Throws<DescriptionException>(() => MachineCatalog.Find("nowhere/bench.toml"));
        Assert.Equal("nowhere/bench.toml: there is no such file.", refused.Message);
    }

    [Theory]
    [InlineData("200,200,180", 200, 200, 180)]
    [InlineData(" 0.5 , 1e2, 30", 0.5, 100, 30)]
    public void Box_FromArgument_HasNoMargin(string text, double width, double depth, double height)
    {
        Machine machine = MachineArguments.Box(text);
        Assert.Equal(new BoxVolume(width, depth, height), machine.BuildVolume);
        Assert.Equal(Margins.None, machine.Margins);
        Assert.Null(machine.HeatsTo);
    }

    [Theory]
    [InlineData("")]
    [InlineData("200,200")]
    [InlineData("200,200,180,1")]
    [InlineData("200;200;180")]
    [InlineData("200,0,180")]
    [InlineData("200,NaN,180")]
    [InlineData("200,-5,180")]
    public void Box_WrongArgument_IsRefusedByName(string text)
    {
        var refused = Assert.Throws<DescriptionException>(() => MachineArguments.Box(text));
        Assert.Equal("--box", refused.Errors[0].Key);
    }

    [Fact]
    public void Cylinder_FromArgument() =>
        Assert.Equal(new CylinderVolume(200, 180), MachineArguments.Cylinder("200,180").BuildVolume);

    [Fact]
    public void WithMargin_LeavingNoRoom_IsRefused()
    {
        Machine machine = MachineArguments.Box("200,200,180");
        Assert.Equal(Margins.Uniform(3), MachineArguments.WithMargin(machine, 3).Margins);
        Assert.Throws<DescriptionException>(() => MachineArguments.WithMargin(machine, 100));
        Assert.Throws<DescriptionException>(() => MachineArguments.WithMargin(machine, -1));
    }

    [Fact]
    public void Material_Find_IgnoresCaseAndSuggests()
    {
        Assert.Equal("PETG", MaterialCatalog.Find("petg")!.Name);
        Assert.Null(MaterialCatalog.Find("PETH"));
        var refused = Assert.Throws<DescriptionException>(() => MaterialCatalog.Get("PETH"));
        Assert.Contains("Did you mean \"PETG\"?", refused.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Material_Numbers_AreThoseOfTheReferenceTables()
    {
        // Crawford, Plastics Engineering, table 1.8.
        Assert.Equal((1.04, 1300), Solid("ABS"));
        Assert.Equal((0.905, 2000), Solid("PP"));
        Assert.Equal((1200, 149), (MaterialCatalog.Find("PC")!.SpecificHeatJKgK, MaterialCatalog.Find("PC")!.SofteningC));
        // 1 kg of PLA is 335.3 m at 1.75 mm: follows from 1.24 g/cm³ (data sheets).
        double metres = 1000 / MaterialCatalog.Find("PLA")!.DensityGCm3 / (Math.PI * 1.75 * 1.75 / 4);
        Assert.Equal(335.3, metres, 1);
        Assert.All(MaterialCatalog.Bundled, m =>
        {
            Assert.True(m.UsualC.NozzleC >= m.Needs.NozzleC && m.UsualC.BedC >= m.Needs.BedC);
            Assert.True(m.UsualC.ChamberC >= m.Needs.ChamberC && m.ReleaseC < m.UsualC.BedC);
            Assert.InRange(m.MeltRateFactor, 0.2, 1);
            Assert.Contains("NIOSH", m.Fumes!, StringComparison.Ordinal);
        });

        static (double, double) Solid(string name) =>
            (MaterialCatalog.Find(name)!.DensityGCm3, MaterialCatalog.Find(name)!.SpecificHeatJKgK);
    }

    [Fact]
    public void Material_Brims_FollowCommonPractice()
    {
        // 3 mm or less for PLA and PETG, 5 to 10 mm in ABS, ASA, PC, PA, PP: common practice, no source.
        Assert.All(["PLA", "PETG"], n => Assert.InRange(MaterialCatalog.Find(n)!.BrimMm, 0, 3));
        Assert.All(["ABS", "ASA", "PC", "PA", "PP"], n => Assert.InRange(MaterialCatalog.Find(n)!.BrimMm, 5, 10));
    }
}
