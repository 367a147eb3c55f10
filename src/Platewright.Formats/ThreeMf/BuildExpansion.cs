using Platewright.Formats.Reading;
using Platewright.Geometry;

namespace Platewright.Formats.ThreeMf;

/// <summary>
/// Build items with their components, put in place: a first walk refuses what is missing, endless, too deep or too
/// large, a second one builds the meshes.
/// </summary>
internal sealed class BuildExpansion(ThreeMfPackage package, ReadRequest request, LengthUnit rootUnit)
{
    private readonly NestingCount<ObjectKey> _count = new(request);
    private readonly List<Vec3> _vertices = [];
    private readonly List<int> _corners = [];

    /// <summary>The object that is placed.</summary>
    public ThreeMfObject ObjectOf(Placement placement) =>
        ObjectOf(new ObjectKey(placement.Part, placement.ObjectId), placement.Place);

    /// <summary>How many triangles the placed object has with all its components.</summary>
    public long CountTriangles(Placement placement) =>
        _count.Count(new ObjectKey(placement.Part, placement.ObjectId), placement.Place, LookAt);

    /// <summary>The mesh in mm of a build item whose triangles have been counted and are not none.</summary>
    /// <param name="scale">Length of the root part's unit, mm.</param>
    public Mesh Build(Placement item, double scale)
    {
        _vertices.Clear();
        _corners.Clear();
        Add(item, Affine.Scaling(scale), rootUnit);
        foreach (Vec3 p in _vertices)
        {
            if (ReadRequest.IsInRange(p)) continue;
            throw request.Refuse(
                item.Place, $"object {item.ObjectId} is too large", "check the unit and the transform");
        }
        return new Mesh(_vertices.ToArray(), _corners.ToArray());
    }

    /// <summary>What the triangles of a build item look like, and how many look so.</summary>
    public Dictionary<Look, long> Looks(Placement item)
    {
        var looks = new Dictionary<Look, long>();
        CountLooks(item, looks);
        return looks;
    }

    private (long Own, IEnumerable<(ObjectKey, string)> Inner) LookAt(ObjectKey key, string place)
    {
        ThreeMfObject placed = ObjectOf(key, place);
        return (
            placed.Mesh?.TriangleCount ?? 0,
            placed.Components.Select(c => (new ObjectKey(c.Part, c.ObjectId), c.Place)));
    }

    private void Add(Placement placement, Affine outer, LengthUnit outerUnit)
    {
        request.Cancel.ThrowIfCancellationRequested();
        LengthUnit unit = package.Model(placement.Part, placement.Place).Unit;
        Affine inner = placement.Transform;
        // A part with a unit of its own is drawn in it; what places it speaks the outer part's.
        if (unit != outerUnit) inner = Affine.Scaling(unit.ToMillimetres() / outerUnit.ToMillimetres()).Then(inner);
        Affine transform = inner.Then(outer);
        ThreeMfObject placed = ObjectOf(placement);
        if (placed.Mesh is { } mesh)
        {
            int first = _vertices.Count;
            Mesh moved = mesh.Transformed(transform.Linear, transform.Offset);
            _vertices.AddRange(moved.Vertices);
            foreach (int corner in moved.Corners) _corners.Add(first + corner);
        }
        foreach (Placement component in placed.Components)
        {
            if (CountTriangles(component) > 0) Add(component, transform, unit);
        }
    }

    private void CountLooks(Placement placement, Dictionary<Look, long> looks)
    {
        ThreeMfModel model = package.Model(placement.Part, placement.Place);
        ThreeMfObject placed = ObjectOf(placement);
        foreach ((PropertyReference property, int count) in placed.Properties)
        {
            Look look = model.Groups.TryGetValue(property.Group, out PropertyGroup? group) && group.Looks is { } known
                ? known[property.Index]
                : default;
            looks[look] = looks.GetValueOrDefault(look) + count;
        }
        foreach (Placement component in placed.Components)
        {
            if (CountTriangles(component) > 0) CountLooks(component, looks);
        }
    }

    private ThreeMfObject ObjectOf(ObjectKey key, string place) =>
        package.Model(key.Part, place).Objects.TryGetValue(key.Id, out ThreeMfObject? found)
            ? found
            : throw request.Refuse(place, $"there is no object {key.Id}");

    /// <summary>
    /// Names of parts are compared by the package, so two spellings of one part only cost a second look.
    /// </summary>
    private readonly record struct ObjectKey(string Part, int Id);
}
