using Platewright.Formats;
using Platewright.Geometry;

namespace Platewright.Study.Examining;

/// <summary>Reads one file and examines every part in it. Nothing of the meshes outlives the call.</summary>
internal static class Examiner
{
    private const string NothingToFit =
        "all its points lie on a line, so there is nothing to make; export it again";

    /// <returns>With <see cref="Examination.PlaceholderFor"/> in place of the file's name.</returns>
    public static Examination Examine(string path, ExamineOptions options, CancellationToken cancel)
    {
        ModelReading reading = ModelReader.Read(path, Examination.PlaceholderFor(path), options.Limits, options.Unit, cancel);
        List<ExaminedPart> parts = [];
        List<UnusableFile> unusable = [.. reading.Unusable];
        foreach (ModelFile file in reading.Files)
        {
            foreach (ModelPart part in file.Parts.SelectMany(p => options.Separate ? Separated(p) : [p]))
            {
                cancel.ThrowIfCancellationRequested();
                if (Examine(file, part, options) is { } examined) parts.Add(examined);
                else unusable.Add(Refused(file, part));
            }
        }
        return new Examination(parts, unusable);
    }

    internal static IEnumerable<ModelPart> Separated(ModelPart part)
    {
        IReadOnlyList<Mesh> pieces = ShellSeparation.Separate(part.Mesh);
        return pieces.Count < 2
            ? [part]
            : pieces.Select((mesh, i) => part with { Mesh = mesh, Name = part.Name is null ? $"shell {i + 1}" : $"{part.Name}, shell {i + 1}" });
    }

    private static ExaminedPart? Examine(ModelFile file, ModelPart part, ExamineOptions options)
    {
        HealthOptions health = HealthOptions.Default with
        {
            BeadWidthMm = options.BeadWidthMm,
            UnitIsAssumed = file.UnitSource == UnitSource.Assumed,
        };
        MeshReport report = MeshHealth.Examine(part.Mesh, health);
        if (report.Hull is not { Dimension: >= 2 } hull) return null;
        return new ExaminedPart
        {
            File = file.File,
            Object = part.Name,
            Format = file.Format == ModelFormat.ThreeMf ? "3mf" : file.Format.ToString().ToLowerInvariant(),
            Unit = file.Unit.Symbol(),
            Material = part.Material,
            Colour = part.Colour,
            MadeBy = OriginText.Of(file.Origin.Designer),
            Licence = OriginText.Of(file.Origin.Licence, file.Origin.Copyright),
            Triangles = report.Triangles,
            Vertices = report.Vertices,
            Shells = report.Shells,
            Closed = report.IsClosed,
            VolumeMm3 = report.VolumeMm3,
            AreaMm2 = report.AreaMm2,
            Bounds = report.Bounds,
            HullVolumeMm3 = hull.VolumeMm3,
            TightestBoxMm = [.. Sizes(TightestBox.Of(hull).SizeMm)],
            ThinnestWallMm = report.ThinnestWallMm,
            Findings = [.. file.Notes.Select(n => new Finding(n.Code, 1, n.Message)), .. report.Findings],
            Hull = ExaminedPart.Packed(hull),
            MeshKey = ExaminedPart.KeyOf(part.Mesh),
            Signature = options.ForStudy ? ShapeSignature.Of(report.Mesh, hull) : null,
            Look = options.ForStudy ? PartLook.Of(report.Mesh) : null,
        };
    }

    private static IEnumerable<double> Sizes(Vec3 size) => new[] { size.X, size.Y, size.Z }.OrderDescending();

    private static UnusableFile Refused(ModelFile file, ModelPart part) => new(
        file.File, part.Name, part.Name is null ? $"{file.File}: {NothingToFit}." : $"{file.File}, {part.Name}: {NothingToFit}.");
}
