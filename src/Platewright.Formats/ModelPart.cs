using Platewright.Geometry;

namespace Platewright.Formats;

/// <summary>One part of a model file, as the file builds it: in place, transforms applied.</summary>
public sealed record ModelPart
{
    /// <summary>The object's name inside a file of several; null where the file is one part.</summary>
    public string? Name { get; init; }

    /// <summary>At least one triangle; coordinates in mm, every one finite, every vertex used.</summary>
    public required Mesh Mesh { get; init; }

    /// <summary>Name of the material in the file's own words; null where it does not say.</summary>
    public string? Material { get; init; }

    /// <summary>#RRGGBB; null where the file does not say.</summary>
    public string? Colour { get; init; }

    public ObjectType Type { get; init; } = ObjectType.Model;
}

/// <summary>
/// What an object is for (3MF core specification 1.3, section 4.1); every other format has models only.
/// </summary>
public enum ObjectType
{
    /// <summary>A part to make.</summary>
    Model,

    /// <summary>Support to be filled like a part; made, but thrown away.</summary>
    SolidSupport,

    /// <summary>Support whose inside is the machine's choice; made, but thrown away.</summary>
    Support,

    /// <summary>An open surface.</summary>
    Surface,

    /// <summary>Not to be built by itself; only components may refer to it.</summary>
    Other,
}
