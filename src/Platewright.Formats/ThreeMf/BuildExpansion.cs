using Platewright.Formats.Reading;
using Platewright.Geometry;

namespace Platewright.Formats.ThreeMf;

/// <summary>
/// Build items with their components, put in place: a first walk refuses what is missing, endless, too deep or too
/// large, a second one builds the meshes.
/// </summary>
internal sealed class BuildExpansion(ThreeMfPackage package, ReadRequest request, LengthUnit rootUnit)
{
    private readonly Dictionary<(string, int), (long Triangles, int Height)> _counted = [];
    private readonly HashSet<(string, int)> _open = [];
    private readonly List<Vec3> _vertices = [];
    private readonly List<int> _corners = [];

    /// <summary>The object that is placed.</summary>
    public ThreeMfObject ObjectOf(Placement placement) =>
        package.Model(placement.Part, placement.Place).Objects.TryGetValue(placement.ObjectId, out ThreeMfObject? found)
            ? found
            : throw request.Refuse(placement.Place, $"there is no object {placement.ObjectId}");

    /// <summary>How many triangles the placed object has with all its components.</summary>
    public long CountTriangles(Placement placement) => Count(placement, 0).Triangles;

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

    private (long Triangles, int Height) Count(Placement placement, int depth)
    {
        (string, int) key = (placement.Part.ToUpperInvariant(), placement.ObjectId);
        if (_open.Contains(key)) throw request.Refuse(placement.Place, $"object {placement.ObjectId} contains itself");
        if (!_counted.TryGetValue(key, out (long Triangles, int Height) counted))
        {
            CheckDepth(placement, depth);
            ThreeMfObject placed = ObjectOf(placement);
            counted = (placed.Mesh?.TriangleCount ?? 0, 0);
            _open.Add(key);
            foreach (Placement component in placed.Components)
            {
                (long triangles, int height) = Count(component, depth + 1);
                counted = (counted.Triangles + triangles, Math.Max(counted.Height, height + 1));
                request.CheckTriangles(counted.Triangles, component.Place);
            }
            _open.Remove(key);
            _counted[key] = counted;
        }
        CheckDepth(placement, depth + counted.Height);
        return counted;
    }

    private void CheckDepth(Placement placement, int depth)
    {
        if (depth <= request.Limits.ComponentDepth) return;
        throw request.Refuse(
            placement.Place, $"components lie more than {request.Limits.ComponentDepth} deep", "raise the limit");
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
}
