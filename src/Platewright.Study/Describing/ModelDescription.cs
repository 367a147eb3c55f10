using Platewright.Formats;
using Platewright.Study.Documents;
using Platewright.Study.Examining;

namespace Platewright.Study.Describing;

/// <summary>An examined model as the documents show it.</summary>
internal static class ModelDescription
{
    public static InspectedModelDocument Of(ExaminedPart part) => new(
        part.File, part.Object, part.Format, part.Unit, part.Triangles, part.Vertices, part.Shells, part.Closed,
        part.VolumeMm3, part.AreaMm2,
        new BoxDocument(MachineDescription.Numbers(part.Bounds.Min), MachineDescription.Numbers(part.Bounds.Max)),
        part.HullVolumeMm3, part.TightestBoxMm, FindingsDescription.Of(part.Findings, part.Bounds.Size));

    public static UnusableDocument Of(UnusableFile file) => new(file.File, file.Message);
}
