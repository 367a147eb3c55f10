using Platewright.Formats.Toml;
using Platewright.Machines;

namespace Platewright.Tests.Machines;

public sealed class RecipeCatalogTests
{
    [Fact]
    public void Bundled_AreFourPurposesFromFineToCoarse()
    {
        Assert.Equal(["show", "use", "load", "quick-check"], RecipeCatalog.Bundled.Select(r => r.Id));
        Assert.All(RecipeCatalog.Bundled, r => Assert.True(r.Bundled));
        Assert.All(RecipeCatalog.Bundled, r => Assert.EndsWith(".", r.Purpose!, StringComparison.Ordinal));
        Assert.All(RecipeCatalog.Bundled, r => Assert.Null(r.Speeds.Travel));
    }

    [Theory]
    [InlineData("quick-check")]
    [InlineData("Quick Check")]
    public void Find_ByIdOrName_CaseAside(string name) => Assert.Equal("quick check", RecipeCatalog.Find(name).Name);

    [Fact]
    public void Find_Unknown_SuggestsTheNearest()
    {
        var refused = Assert.Throws<DescriptionException>(() => RecipeCatalog.Find("quick-chek"));
        Assert.Contains("Did you mean \"quick-check\"?", refused.Message, StringComparison.Ordinal);
        Assert.Equal(
            "nowhere/fine.toml: there is no such file.",
            Assert.Throws<DescriptionException>(() => RecipeCatalog.Find("nowhere/fine.toml")).Message);
    }
}
