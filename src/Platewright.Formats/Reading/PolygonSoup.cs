using System.Runtime.InteropServices;
using Platewright.Geometry;

namespace Platewright.Formats.Reading;

/// <summary>Polygons over a list of vertices as a file gives them, until they become triangles.</summary>
internal sealed class PolygonSoup
{
    private readonly List<int> _indices = [];
    private readonly List<int> _ends = [];

    public int Count => _ends.Count;

    public long TriangleCount { get; private set; }

    /// <summary>Faces with fewer than three corners: nothing to make of them.</summary>
    public int TooSmall { get; private set; }

    public void Add(ReadOnlySpan<int> polygon)
    {
        if (polygon.Length < 3)
        {
            TooSmall++;
            return;
        }
        TriangleCount += polygon.Length - 2;
        _indices.AddRange(polygon);
        _ends.Add(_indices.Count);
    }

    /// <summary>The first face with a corner that is no vertex, and that corner; null where all are.</summary>
    public (int Face, int Corner)? FirstBadFace(int vertexCount)
    {
        ReadOnlySpan<int> indices = CollectionsMarshal.AsSpan(_indices);
        for (int i = 0; i < indices.Length; i++)
        {
            if ((uint)indices[i] >= (uint)vertexCount) return (_ends.FindIndex(end => end > i), indices[i]);
        }
        return null;
    }

    /// <summary>Triangles of the faces from one to before another, over the vertices they use.</summary>
    public Mesh ToMesh(ReadOnlySpan<Vec3> vertices, int firstFace, int endFace, Compaction compaction)
    {
        ReadOnlySpan<int> indices = CollectionsMarshal.AsSpan(_indices);
        var corners = new List<int>();
        int start = firstFace == 0 ? 0 : _ends[firstFace - 1];
        for (int f = firstFace; f < endFace; f++)
        {
            PolygonFan.AddTriangles(indices[start.._ends[f]], corners);
            start = _ends[f];
        }
        return compaction.UsedOnly(vertices, corners.ToArray());
    }
}
