using Platewright.Study.Documents;
using Platewright.Study.Judgement;

namespace Platewright.Study.Deciding;

/// <summary>
/// Hours and filament of parts that no machine of the study makes, from their size: the study's own mean for each volume. Leaving them
/// out would make every machine look better, since they are the large ones.
/// </summary>
/// <param name="SecondsPerMm3">Mean of machine time over the volume of the parts estimated; null where none was.</param>
/// <param name="GramsPerMm3">The same for filament.</param>
/// <param name="VolumePerBox">Mean share of its tightest box that a part fills, for parts given by their dimensions.</param>
internal sealed record SizeReckoning(double? SecondsPerMm3, double? GramsPerMm3, double VolumePerBox)
{
    /// <summary>Where no part has a volume; 0.2 is our choice for hollow things.</summary>
    private const double UsualFill = 0.2;

    public static SizeReckoning Of(JudgedStudy study)
    {
        StudiedPart[] parts = [.. study.Projects.SelectMany(p => p.Parts)];
        var estimated = parts
            .Select(p => (Volume: p.Part.Examined?.VolumeMm3 ?? 0, Best: p.Estimates.OfType<PartEstimateDocument>().MinBy(e => e.TimeS.Total)))
            .Where(p => p is { Volume: > 0, Best: not null }).ToArray();
        double volume = estimated.Sum(p => p.Volume);
        var boxed = parts.Where(p => p.Part.Examined?.VolumeMm3 > 0).ToArray();
        double boxes = boxed.Sum(BoxMm3);
        return new SizeReckoning(
            volume > 0 ? estimated.Sum(p => p.Best!.TimeS.Total) / volume : null,
            volume > 0 ? estimated.Sum(p => p.Best!.MassG) / volume : null,
            boxes > 0 ? Math.Min(1, boxed.Sum(p => p.Part.Examined!.VolumeMm3!.Value) / boxes) : UsualFill);
    }

    public double? SecondsOf(StudiedPart part) => SecondsPerMm3 * VolumeOf(part);

    public double? GramsOf(StudiedPart part) => GramsPerMm3 * VolumeOf(part);

    private double VolumeOf(StudiedPart part) => part.Part.Examined?.VolumeMm3 is > 0 and { } known ? known : VolumePerBox * BoxMm3(part);

    private static double BoxMm3(StudiedPart part)
    {
        Geometry.Vec3 size = part.Part.SizeMm;
        return size.X * size.Y * size.Z;
    }
}
