using Platewright.Formats;
using Platewright.Geometry;

namespace Platewright.Study.Examining;

/// <summary>Reads one file and examines every part in it. Nothing of the meshes outlives the call.</summary>
internal static class Examiner
{
    /// <returns>With <see cref="Examination.PlaceholderFor"/> in place of the file's name.</returns>
    public static Examination Examine(string path, ExamineOptions options, CancellationToken cancel)
    {
        ModelReading reading = ModelReader.Read(path, Examination.PlaceholderFor(path), options.Limits, options.Unit, cancel);
        List<ExaminedPart> parts = [];
        foreach (ModelFile file in reading.Files)
        {
            foreach (ModelPart part in file.Parts)
            {
                cancel.ThrowIfCancellationRequested();
                parts.Add(Examine(file, part, options));
            }
        }
        return new Examination(parts, reading.Unusable);
    }

    private static ExaminedPart Examine(ModelFile file, ModelPart part, ExamineOptions options)
    {
        Mesh mesh = Welding.Weld(part.Mesh);
        MeshTopology topology = MeshTopology.Of(mesh);
        MeshMeasures measures = MeshMeasures.Of(mesh);
        ConvexHull hull = ConvexHull.Of(mesh.Vertices);
        return new ExaminedPart
        {
            File = file.File,
            Object = part.Name,
            Format = file.Format == ModelFormat.ThreeMf ? "3mf" : file.Format.ToString().ToLowerInvariant(),
            Unit = file.Unit.Symbol(),
            Material = part.Material,
            Colour = part.Colour,
            Triangles = mesh.TriangleCount,
            Vertices = mesh.Vertices.Length,
            Shells = topology.ShellCount,
            Closed = topology.IsClosed,
            VolumeMm3 = topology.IsClosed ? measures.SignedVolumeMm3 : null,
            AreaMm2 = measures.AreaMm2,
            Bounds = mesh.Bounds,
            HullVolumeMm3 = hull.VolumeMm3,
            TightestBoxMm = [.. Sizes(TightestBox.Of(hull).SizeMm)],
            ThinnestWallMm = null,
            Findings = [.. file.Notes.Select(n => new Finding(n.Code, 1, n.Message))],
            Hull = ExaminedPart.Packed(hull),
            Look = options.WithLook ? PartLook.Of(mesh) : null,
        };
    }

    private static IEnumerable<double> Sizes(Vec3 size) => new[] { size.X, size.Y, size.Z }.OrderDescending();
}
