using System.Globalization;
using Platewright.Machines;

namespace Platewright.Tests.Machines;

/// <summary>The examples of the machine page read, and its tables say what is bundled.</summary>
public sealed class DocumentationTests
{
    private static readonly string Page = File.ReadAllText(Path.Combine(Repository.Root, "docs", "machine-file.md"));

    [Fact]
    public void Examples_OfTheMachinePage_Read()
    {
        string[] examples = Fenced.Toml(Page);

        Assert.Equal(4, examples.Length);
        Assert.All(examples, e => MachineFile.Parse(e, "docs/machine-file.md"));
    }

    [Fact]
    public void Tables_OfTheMachinePage_AreTheBundledOnes()
    {
        foreach (Machine machine in MachineCatalog.Bundled)
        {
            string volume = machine.BuildVolume switch
            {
                BoxVolume box => $"{box.WidthMm} × {box.DepthMm} × {box.HeightMm}",
                CylinderVolume round => $"⌀ {round.DiameterMm} × {round.HeightMm}",
                _ => "",
            };
            string enclosed = machine.Enclosed is true ? "yes" : "no";
            Assert.Contains(
                $"| `{machine.Id}` | {volume} | {enclosed} | {Heat(machine.HeatsTo!)} | {machine.Price!.Amount:0} |\n",
                Page, StringComparison.Ordinal);
            (MotionLimits motion, Heating heating) = (machine.Motion!, machine.Heating!);
            string chamber = heating.Chamber is { } heater ? $"{heater.PowerW}" : "–";
            Assert.Contains(
                $"| `{machine.Id}` | {motion.SpeedMmS} | {motion.AccelerationMmS2} | {machine.Extruder.MeltRateMm3S} | "
                + $"{heating.Bed!.PowerW} | {chamber} | {heating.SupplyW} |\n", Page, StringComparison.Ordinal);
        }
        foreach (Material material in MaterialCatalog.Bundled)
        {
            double percent = Math.Round(material.Shrinkage * 100, 6);
            string shrinkage = percent == 0 ? "0" : percent.ToString(CultureInfo.InvariantCulture) + " %";
            Assert.Contains(
                $"| {material.Name} | {Heat(material.Needs)} | {shrinkage} | {material.BrimMm} |\n", Page,
                StringComparison.Ordinal);
            string vent = material.VentAboveC is { } limit ? Text(limit) : "–";
            string dry = material.Drying is { } drying ? $"{drying.TemperatureC} °C, {drying.Hours} h" : "–";
            Assert.Contains(
                $"| {material.Name} | {Heat(material.UsualC)} | {vent} | {material.SofteningC} | {material.ReleaseC} | "
                + $"{Text(material.DensityGCm3)} | {material.SpecificHeatJKgK} | {material.MinimumLayerTimeS} | "
                + $"{Text(material.MeltRateFactor)} | {material.SpoolG} | {material.PricePerKg!.Amount:0} | {dry} |\n",
                Page, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void RecipePage_ExamplesReadAndTableIsTheBundledOnes()
    {
        string page = File.ReadAllText(Path.Combine(Repository.Root, "docs", "recipe-file.md"));
        string[] examples = Fenced.Toml(page);

        Assert.Equal(2, examples.Length);
        Assert.All(examples, e => RecipeFile.Parse(e, "docs/recipe-file.md"));
        foreach (Recipe recipe in RecipeCatalog.Bundled)
        {
            Assert.Contains(
                $"| `{recipe.Id}` | {recipe.Purpose} | {Text(recipe.LayerHeightMm)} | {Text(recipe.BeadWidthMm)} | "
                + $"{recipe.Walls} | {recipe.SolidLayers} | {Text(recipe.InfillShare)} | {recipe.Speeds.Walls} |\n",
                page, StringComparison.Ordinal);
        }
    }

    private static string Text(double value) => value.ToString(CultureInfo.InvariantCulture);

    private static string Heat(HeatLimits heat) => $"{heat.NozzleC} / {heat.BedC} / {heat.ChamberC}";
}

/// <summary>Takes the fenced examples out of a Markdown page.</summary>
internal static class Fenced
{
    public static string[] Toml(string page) =>
        [.. page.Split("```toml\n").Skip(1).Select(rest => rest[..rest.IndexOf("```", StringComparison.Ordinal)])];
}
