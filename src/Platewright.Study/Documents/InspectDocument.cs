using System.Text.Json.Serialization;

namespace Platewright.Study.Documents;

/// <summary>What <c>inspect --json</c> says. Keys are the snake_case of these names.</summary>
public sealed record InspectDocument(IReadOnlyList<InspectedModelDocument> Models, IReadOnlyList<UnusableDocument> Unusable)
{
    [JsonPropertyOrder(-1)]
    public int Format { get; init; } = 1;
}

/// <param name="File">As the user named it, with forward slashes; below a named folder or pack, the path inside follows.</param>
/// <param name="Part">Name of the object inside a file of several, null where the file is one part.</param>
/// <param name="Format">stl, obj, ply, 3mf or amf.</param>
/// <param name="Unit">The unit the file's numbers were taken to be in; all values here are mm.</param>
/// <param name="Vertices">Distinct positions.</param>
/// <param name="Shells">Edge-connected components.</param>
/// <param name="Closed">Every edge is used once in each direction.</param>
/// <param name="VolumeMm3">Null where the mesh is not closed.</param>
/// <param name="TightestBoxMm">Edges of the smallest box around the part in any pose, largest first.</param>
public sealed record InspectedModelDocument(
    string File, string? Part, string Format, string Unit, int Triangles, int Vertices, int Shells, bool Closed,
    double? VolumeMm3, double AreaMm2, BoxDocument BoundsMm, double HullVolumeMm3, IReadOnlyList<double> TightestBoxMm,
    IReadOnlyList<FindingDocument> Findings);
