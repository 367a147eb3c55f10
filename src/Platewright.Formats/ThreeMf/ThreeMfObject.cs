using Platewright.Geometry;

namespace Platewright.Formats.ThreeMf;

/// <summary>An object resource of a model part: a mesh or components, in the part's own unit.</summary>
internal sealed record ThreeMfObject
{
    public required int Id { get; init; }

    public required string? Name { get; init; }

    public required ObjectType Type { get; init; }

    /// <summary>Null for an object of components, and for a mesh without triangles.</summary>
    public Mesh? Mesh { get; init; }

    public IReadOnlyList<Placement> Components { get; init; } = [];

    /// <summary>How many triangles have each property.</summary>
    public IReadOnlyDictionary<PropertyReference, int> Properties { get; init; } =
        new Dictionary<PropertyReference, int>();

    public int Beams { get; init; }

    /// <summary>The mesh only stands in for slices.</summary>
    public bool IsLowResolution { get; init; }
}

/// <summary>An object put somewhere: a component of another object, or an item of the build.</summary>
/// <param name="Part">Model part that holds the object.</param>
/// <param name="Place">Where the file says so.</param>
internal sealed record Placement(string Part, int ObjectId, Affine Transform, string Place);

/// <summary>One property of a group: <c>pid</c> and <c>pindex</c> or <c>p1</c>.</summary>
internal readonly record struct PropertyReference(int Group, int Index);
