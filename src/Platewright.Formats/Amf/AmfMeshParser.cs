using System.Runtime.InteropServices;
using Platewright.Formats.Reading;
using Platewright.Formats.Xml;
using Platewright.Geometry;

namespace Platewright.Formats.Amf;

/// <summary>The mesh of an AMF object: one list of vertices, one or more volumes of triangles.</summary>
/// <param name="before">Triangles in the objects before it.</param>
internal sealed class AmfMeshParser(XmlWalk walk, AmfModel model, ReadRequest request, long before)
{
    private readonly List<Vec3> _vertices = [];
    private readonly List<int> _corners = [];
    private readonly List<AmfVolume> _volumes = [];

    public IReadOnlyList<AmfVolume> Volumes => _volumes;

    /// <summary>All volumes as one mesh; null where there are no triangles.</summary>
    public Mesh? Build() =>
        _corners.Count == 0
            ? null
            : new Compaction(_vertices.Count).UsedOnly(CollectionsMarshal.AsSpan(_vertices), _corners.ToArray());

    public void Parse()
    {
        int entered = walk.Enter();
        while (walk.NextChild(entered))
        {
            if (walk.Name == "vertices") ParseVertices();
            else if (walk.Name == "volume") ParseVolume();
        }
    }

    private void ParseVertices()
    {
        int vertices = walk.Enter();
        while (walk.NextChild(vertices))
        {
            if (walk.Name == "edge") model.CurvedTriangles++;
            if (walk.Name != "vertex") continue;
            bool found = false;
            int vertex = walk.Enter();
            while (walk.NextChild(vertex))
            {
                if (walk.Name is "normal" or "edge") model.CurvedTriangles++;
                if (walk.Name != "coordinates" || found) continue;
                _vertices.Add(ParseCoordinates());
                found = true;
            }
            if (!found) throw walk.Refuse("the vertex has no coordinates");
        }
    }

    private Vec3 ParseCoordinates()
    {
        double x = double.NaN, y = double.NaN, z = double.NaN;
        int entered = walk.Enter();
        while (walk.NextChild(entered))
        {
            if (walk.Name == "x") x = AmfText.TakeNumber(walk);
            else if (walk.Name == "y") y = AmfText.TakeNumber(walk);
            else if (walk.Name == "z") z = AmfText.TakeNumber(walk);
        }
        if (double.IsNaN(x) || double.IsNaN(y) || double.IsNaN(z)) throw walk.Refuse("a coordinate is missing");
        return new Vec3(x, y, z);
    }

    private void ParseVolume()
    {
        string? material = walk.Attribute("materialid");
        string? colour = null;
        int first = _corners.Count;
        int entered = walk.Enter();
        while (walk.NextChild(entered))
        {
            if (walk.Name is "color" or "colour") colour = AmfText.TakeColour(walk);
            else if (walk.Name == "triangle") ParseTriangle();
        }
        _volumes.Add(new AmfVolume(material, colour, (_corners.Count - first) / 3));
    }

    private void ParseTriangle()
    {
        int v1 = -1, v2 = -1, v3 = -1;
        int entered = walk.Enter();
        while (walk.NextChild(entered))
        {
            if (walk.Name == "v1") v1 = Vertex();
            else if (walk.Name == "v2") v2 = Vertex();
            else if (walk.Name == "v3") v3 = Vertex();
        }
        if (v1 < 0 || v2 < 0 || v3 < 0) throw walk.Refuse("a corner is missing");
        _corners.Add(v1);
        _corners.Add(v2);
        _corners.Add(v3);
        if (before + _corners.Count / 3 > request.Limits.Triangles)
            request.CheckTriangles(before + _corners.Count / 3, walk.Place);
    }

    private int Vertex()
    {
        int vertex = AmfText.TakeIndex(walk);
        if (vertex >= _vertices.Count)
            throw walk.Refuse($"there is no vertex {vertex}, the mesh has {_vertices.Count}");
        return vertex;
    }
}
