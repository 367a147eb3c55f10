using System.Globalization;
using Platewright.Study.Documents;

namespace Platewright.Cli.Display;

/// <summary>A build volume in words.</summary>
internal static class BuildVolumeText
{
    private const double LongestPlainMm = 1e6;

    public static string Of(BuildVolumeDocument volume) => volume switch
    {
        { SizeMm: { } size } => $"{string.Join(" × ", size.Select(Mm))} mm",
        { DiameterMm: { } diameter } => $"Ø {Mm(diameter)} × {Mm(volume.HeightMm)} mm",
        _ => $"{volume.PolygonMm?.Count ?? 0}-sided, {Mm(volume.HeightMm)} mm high",
    };

    public static string Mm(double mm) => mm.ToString(Math.Abs(mm) < LongestPlainMm ? "0.##" : "0.##e0", CultureInfo.InvariantCulture);
}
