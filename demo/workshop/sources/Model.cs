using Platewright.Demo.Modelling;
using Platewright.Geometry;

namespace Platewright.Demo;

/// <summary>The formats the workshop's files come in.</summary>
public enum FileKind
{
    StlBinary,
    StlText,
    Obj,
    PlyText,
    PlyBinary,
    ThreeMf,
    Amf,
}

/// <summary>One body of a file.</summary>
/// <param name="Colour">As #RRGGBB; null where the file says nothing.</param>
public sealed record Body(string Name, Mesh Mesh, string? Material = null, string? Colour = null);

/// <summary>One file of the demo.</summary>
/// <param name="Path">Below the folder of models, with forward slashes.</param>
/// <param name="Unit">Of the file's numbers, mm; 25.4 for a file drawn in inches.</param>
public sealed record Model(string Path, FileKind Kind, IReadOnlyList<Body> Bodies, double Unit = 1)
{
    public Model(string path, FileKind kind, Solid solid, string? material = null, string? colour = null)
        : this(path, kind, [new Body(System.IO.Path.GetFileNameWithoutExtension(path), solid.ToMesh(), material,
            colour)])
    {
    }

    public static Model Stl(string path, Solid solid) => new(path, FileKind.StlBinary, solid);
}
