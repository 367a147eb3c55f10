using System.Globalization;
using Platewright.Study.Documents;

namespace Platewright.Cli.Display;

/// <summary>A build volume in words.</summary>
internal static class BuildVolumeText
{
    public static string Of(BuildVolumeDocument volume) => volume switch
    {
        { SizeMm: { } size } => $"{string.Join(" × ", size.Select(Mm))} mm",
        { DiameterMm: { } diameter } => $"Ø {Mm(diameter)} × {Mm(volume.HeightMm)} mm",
        _ => $"{volume.PolygonMm?.Count ?? 0}-sided, {Mm(volume.HeightMm)} mm high",
    };

    public static string Mm(double mm) => mm.ToString("0.##", CultureInfo.InvariantCulture);
}
