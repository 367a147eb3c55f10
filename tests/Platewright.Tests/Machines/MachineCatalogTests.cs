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
    public void Material_Brims_FollowCommonPractice()
    {
        // 3 mm or less for PLA and PETG, 5 to 10 mm in ABS, ASA, PC, PA, PP: common practice, no source.
        Assert.All(["PLA", "PETG"], n => Assert.InRange(MaterialCatalog.Find(n)!.BrimMm, 0, 3));
        Assert.All(["ABS", "ASA", "PC", "PA", "PP"], n => Assert.InRange(MaterialCatalog.Find(n)!.BrimMm, 5, 10));
    }
}
