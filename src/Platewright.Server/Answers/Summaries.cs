using System.Globalization;
using Platewright.Machines;

namespace Platewright.Server.Answers;

/// <summary>Machines, materials and recipes in one line each.</summary>
internal static class Summaries
{
    public static string Of(Machine machine)
    {
        string size = machine.BuildVolume switch
        {
            BoxVolume b => $"{Number(b.WidthMm)} × {Number(b.DepthMm)} × {Number(b.HeightMm)} mm",
            CylinderVolume c => $"Ø {Number(c.DiameterMm)} × {Number(c.HeightMm)} mm",
            PrismVolume p => $"{p.PolygonMm.Length}-sided, {Number(p.HeightMm)} mm high",
            _ => throw new ArgumentException($"No such build volume: {machine.BuildVolume.GetType().Name}.", nameof(machine)),
        };
        string[] facts =
        [
            size,
            machine.HeatsTo is { } h
                ? $"nozzle {Number(h.NozzleC)} °C, bed {Number(h.BedC)} °C{(h.ChamberC > 0 ? $", chamber {Number(h.ChamberC)} °C" : "")}"
                : "heat not stated",
            machine.Price is { } price ? $"{price.Amount.ToString("0.##", CultureInfo.InvariantCulture)} {price.Currency}" : "price not stated",
        ];
        return string.Join(" · ", facts);
    }

    public static string Of(Material material)
    {
        HeatLimits needs = material.Needs;
        string chamber = needs.ChamberC > 0 ? $", chamber {Number(needs.ChamberC)} °C" : "";
        return $"Needs nozzle {Number(needs.NozzleC)} °C, bed {Number(needs.BedC)} °C{chamber}; shrinkage {Number(material.Shrinkage * 100)} %, brim {Number(material.BrimMm)} mm.";
    }

    /// <summary>A recipe is shown as one sentence.</summary>
    public static string Of(Recipe recipe)
    {
        string purpose = recipe.Purpose is { } said ? $"{said.TrimEnd('.')}: " : "";
        string support = recipe.Support ? $"support over more than {Number(recipe.OverhangAngleDeg)}° from the vertical" : "no support";
        string text = $"{purpose}layers of {Number(recipe.LayerHeightMm)} mm, beads {Number(recipe.BeadWidthMm)} mm wide, {recipe.Walls} walls, " +
            $"{recipe.SolidLayers} solid layers at top and bottom, {Number(recipe.InfillShare * 100)} % infill in " +
            $"{recipe.InfillPattern.ToString().ToLowerInvariant()}, {support}.";
        return char.ToUpperInvariant(text[0]) + text[1..];
    }

    private static string Number(double value) => value.ToString("0.###", CultureInfo.InvariantCulture);
}
