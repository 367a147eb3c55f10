using System.Runtime.InteropServices;
using Platewright.Formats.Reading;
using Platewright.Formats.Xml;
using Platewright.Geometry;

namespace Platewright.Formats.ThreeMf;

/// <summary>
/// The mesh element of an object: vertices, triangles with their properties, and how many beams there are.
/// </summary>
internal sealed class MeshParser(
    XmlWalk walk, ThreeMfModel model, ReadRequest request, PropertyReference? objectProperty)
{
    private readonly List<Vec3> _vertices = [];
    private readonly List<int> _corners = [];
    private PropertyReference _latest;
    private int _latestCount;

    public Dictionary<PropertyReference, int> Properties { get; } = [];

    public int Beams { get; private set; }

    /// <summary>The mesh the walk stands on; null where it has no triangles.</summary>
    public Mesh? Parse()
    {
        int entered = walk.Enter();
        while (walk.NextChild(entered))
        {
            if (walk.Name == "vertices" && Namespaces.IsCore(walk.Namespace)) ParseVertices();
            else if (walk.Name == "triangles" && Namespaces.IsCore(walk.Namespace)) ParseTriangles();
            else if (walk.Name == "beamlattice") CountBeams();
        }
        CountLatest();
        return _corners.Count == 0
            ? null
            : new Compaction(_vertices.Count).UsedOnly(CollectionsMarshal.AsSpan(_vertices), _corners.ToArray());
    }

    private void ParseVertices()
    {
        int entered = walk.Enter();
        while (walk.NextChild(entered))
        {
            if (walk.Name != "vertex") continue;
            double x = double.NaN, y = double.NaN, z = double.NaN;
            while (walk.NextAttribute(out string name, out string value))
            {
                if (name == "x") x = walk.Number(value);
                else if (name == "y") y = walk.Number(value);
                else if (name == "z") z = walk.Number(value);
            }
            if (double.IsNaN(x) || double.IsNaN(y) || double.IsNaN(z)) throw walk.Refuse("a coordinate is missing");
            _vertices.Add(new Vec3(x, y, z));
        }
    }

    private void ParseTriangles()
    {
        int entered = walk.Enter();
        while (walk.NextChild(entered))
        {
            if (walk.Name != "triangle") continue;
            int v1 = -1, v2 = -1, v3 = -1, group = -1, index = -1;
            while (walk.NextAttribute(out string name, out string value))
            {
                if (name == "v1") v1 = Vertex(value);
                else if (name == "v2") v2 = Vertex(value);
                else if (name == "v3") v3 = Vertex(value);
                else if (name == "pid") group = walk.Index(value);
                else if (name == "p1") index = walk.Index(value);
                else if (name is "p2" or "p3") CheckIndex(value, group);
            }
            if (v1 < 0 || v2 < 0 || v3 < 0) throw walk.Refuse("a corner is missing");
            _corners.Add(v1);
            _corners.Add(v2);
            _corners.Add(v3);
            CountProperty(group, index);
            if (_corners.Count / 3 > request.Limits.Triangles) request.CheckTriangles(_corners.Count / 3, walk.Place);
        }
    }

    private int Vertex(string value)
    {
        int vertex = walk.Index(value);
        if (vertex >= _vertices.Count)
            throw walk.Refuse($"there is no vertex {vertex}, the mesh has {_vertices.Count}");
        return vertex;
    }

    private void CheckIndex(string value, int group)
    {
        int index = walk.Index(value);
        if (group >= 0) PropertyReferences.Check(new PropertyReference(group, index), model, walk);
    }

    private void CountProperty(int group, int index)
    {
        // A triangle that names no property of its own has the object's.
        PropertyReference property = objectProperty ?? new PropertyReference(-1, -1);
        if (index >= 0 && (group >= 0 || objectProperty is not null))
            property = new PropertyReference(group >= 0 ? group : property.Group, index);
        if (property != _latest || _latestCount == 0)
        {
            CountLatest();
            if (property.Group >= 0) PropertyReferences.Check(property, model, walk);
            _latest = property;
            _latestCount = 0;
        }
        _latestCount++;
    }

    private void CountLatest()
    {
        if (_latestCount > 0) Properties[_latest] = Properties.GetValueOrDefault(_latest) + _latestCount;
    }

    private void CountBeams()
    {
        int lattice = walk.Enter();
        while (walk.NextChild(lattice))
        {
            if (walk.Name != "beams") continue;
            int beams = walk.Enter();
            while (walk.NextChild(beams)) Beams++;
        }
    }
}
