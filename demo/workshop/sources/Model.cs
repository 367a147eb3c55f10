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

/// <summary>One file of the demo, with one body in it.</summary>
/// <param name="Path">Below the folder of models, with forward slashes.</param>
/// <param name="Mesh">In mm.</param>
/// <param name="Material">As the file says it; null where it says nothing.</param>
/// <param name="Colour">As #RRGGBB; null where the file says nothing.</param>
public sealed record Model(string Path, FileKind Kind, Mesh Mesh, string? Material = null, string? Colour = null)
{
    public Model(string path, FileKind kind, Solid solid, string? material = null, string? colour = null)
        : this(path, kind, solid.ToMesh(), material, colour)
    {
    }

    /// <summary>One unit of the file's numbers, mm; 25.4 for a file drawn in inches.</summary>
    public double Unit { get; init; } = 1;

    /// <summary>Who made it and under which licence, for the kinds of file that have a place for that; null says nothing.</summary>
    public (string MadeBy, string Licence)? Origin { get; init; }

    public string Name => System.IO.Path.GetFileNameWithoutExtension(Path);

    /// <summary>The mesh in the file's numbers.</summary>
    internal Mesh Drawn => Unit.Equals(1) ? Mesh : Mesh.Transformed(Matrix3.Identity * (1 / Unit), default);

    public static Model Stl(string path, Solid solid) => new(path, FileKind.StlBinary, solid);
}
