using Platewright.Formats;

namespace Platewright.Study.Examining;

/// <summary>What decides the outcome of an examination besides the file.</summary>
/// <param name="Limits">How much a file may ask for.</param>
/// <param name="Unit">The unit to take the numbers in whatever the file says; null leaves it to the file.</param>
/// <param name="BeadWidthMm">What walls are held against, mm.</param>
/// <param name="Separate">Take loose shells for parts of their own.</param>
/// <param name="ForStudy">Make what only a study shows: pictures, light meshes, signatures.</param>
public sealed record ExamineOptions(ReadLimits Limits, LengthUnit? Unit, double BeadWidthMm, bool Separate = false, bool ForStudy = false)
{
    /// <summary>Width of one bead, mm: common practice for a 0.4 mm nozzle, no source.</summary>
    public const double UsualBeadWidthMm = 0.45;

    public static readonly ExamineOptions Default = new(ReadLimits.Default, null, UsualBeadWidthMm);

    /// <summary>In canonical text, for the key of the result.</summary>
    internal string ToCanonical() => FormattableString.Invariant(
        $"reader={ModelReader.Version};unit={Unit};bead={BeadWidthMm:R};separate={Separate};study={ForStudy};limits={Limits.FileBytes},{Limits.Triangles},") +
        FormattableString.Invariant(
            $"{Limits.UnpackedBytes},{Limits.CompressionRatio:R},{Limits.ArchiveEntries},{Limits.ArchiveDepth},{Limits.ComponentDepth}");
}
