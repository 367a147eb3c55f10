using System.Globalization;
using Platewright.Machines;

namespace Platewright.Cli.Display;

/// <summary>A recipe in words.</summary>
internal static class RecipeText
{
    public static IEnumerable<(string What, string Value)> Rows(Recipe r)
    {
        yield return ("name", r.Name + (r.Bundled ? " (bundled: typical values, common practice)" : ""));
        if (r.Purpose is { } purpose) yield return ("for", purpose);
        if (r.Material is { } material) yield return ("material", $"{material}, where nothing else names one");
        yield return ("layer height", Mm(r.LayerHeightMm));
        yield return ("bead width", Mm(r.BeadWidthMm));
        yield return ("walls", Number(r.Walls));
        yield return ("solid layers", $"{r.SolidLayers} at top and bottom");
        yield return ("infill", $"{Share(r.InfillShare)}, {r.InfillPattern.ToString().ToLowerInvariant()}");
        yield return ("support", r.Support
            ? $"over overhangs of more than {Number(r.OverhangAngleDeg)}° from the vertical, {Share(r.SupportShare)} filled"
            : "none");
        yield return ("brim", r.BrimMm is { } brim ? Mm(brim) : "the material's");
        yield return ("layer time, least", r.MinimumLayerTimeS is { } s ? s == 0 ? "none" : $"{Number(s)} s" : "the material's");
        PathSpeeds v = r.Speeds;
        yield return ("wished speeds", $"walls {Number(v.Walls)}, solid faces {Number(v.SolidFaces)}, infill {Number(v.Infill)}, "
            + $"support {Number(v.Support)}, brim {Number(v.Brim)} mm/s");
        yield return ("travel", v.Travel is { } travel ? $"{Number(travel)} mm/s" : "as fast as the machine can");
    }

    public static string Mm(double mm) => $"{Number(mm)} mm";

    public static string Share(double share) => string.Create(CultureInfo.InvariantCulture, $"{share * 100:0.##} %");

    private static string Number(double value) => value.ToString("0.###", CultureInfo.InvariantCulture);
}
