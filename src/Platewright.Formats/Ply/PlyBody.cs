using System.Runtime.InteropServices;
using Platewright.Formats.Reading;
using Platewright.Geometry;

namespace Platewright.Formats.Ply;

/// <summary>Vertices, faces and strips out of a PLY body, in whatever order its header names them.</summary>
/// <param name="scale">Length of the file's unit, mm.</param>
internal sealed class PlyBody(double scale, ReadRequest request)
{
    private const int ElementsBetweenCancelChecks = 1 << 14;

    private readonly List<Vec3> _vertices = [];
    private readonly List<int> _list = [];

    public PolygonSoup Faces { get; } = new();

    public void Read<TValues>(ref TValues values, PlyHeader header)
        where TValues : IPlyValues, allows ref struct
    {
        foreach (PlyElement element in header.Elements)
        {
            CheckCount(ref values, element);
            if (element.Properties.Count == 0) continue;
            for (long i = 0; i < element.Count; i++)
            {
                if (i % ElementsBetweenCancelChecks == 0) request.Cancel.ThrowIfCancellationRequested();
                if (element.Name == "vertex") ReadVertex(ref values, element);
                else ReadOther(ref values, element);
            }
        }
    }

    /// <summary>The triangles of all faces over the vertices they use.</summary>
    public Mesh ToMesh()
    {
        if (Faces.Count == 0) throw request.RefuseEmpty();
        if (Faces.FirstBadFace(_vertices.Count) is { } bad)
            throw request.Refuse(
                $"face {bad.Face + 1}", $"there is no vertex {bad.Corner}, the file has {_vertices.Count}");
        return Faces.ToMesh(
            CollectionsMarshal.AsSpan(_vertices), 0, Faces.Count, new Compaction(_vertices.Count));
    }

    /// <summary>A promise of more elements than bytes can hold is refused before anything is made for them.</summary>
    private void CheckCount<TValues>(ref TValues values, PlyElement element)
        where TValues : IPlyValues, allows ref struct
    {
        if (element.Properties.Count == 0) return;
        PlyProperty first = element.Properties[0];
        long most = values.MostLeft(first.CountType ?? first.Type);
        if (element.Count > most)
            throw request.Refuse(
                values.Place, $"the header promises {element.Count} of “{element.Name}”, the file ends before");
    }

    private void ReadVertex<TValues>(ref TValues values, PlyElement element)
        where TValues : IPlyValues, allows ref struct
    {
        double xMm = double.NaN, yMm = double.NaN, zMm = double.NaN;
        foreach (PlyProperty property in element.Properties)
        {
            if (property.CountType is not null) SkipList(ref values, property);
            else if (property.Name == "x") xMm = Coordinate(ref values, property.Type);
            else if (property.Name == "y") yMm = Coordinate(ref values, property.Type);
            else if (property.Name == "z") zMm = Coordinate(ref values, property.Type);
            else values.Next(property.Type);
        }
        if (double.IsNaN(xMm) || double.IsNaN(yMm) || double.IsNaN(zMm))
            throw request.Refuse(values.Place, "the vertices lack x, y or z");
        _vertices.Add(new Vec3(xMm, yMm, zMm));
    }

    private double Coordinate<TValues>(ref TValues values, PlyType type)
        where TValues : IPlyValues, allows ref struct
    {
        double mm = values.Next(type) * scale;
        return ReadRequest.IsInRange(mm)
            ? mm
            : throw request.Refuse(values.Place, "a coordinate is not a number or too large");
    }

    private void ReadOther<TValues>(ref TValues values, PlyElement element)
        where TValues : IPlyValues, allows ref struct
    {
        foreach (PlyProperty property in element.Properties)
        {
            bool isIndices = property is { CountType: not null, Name: "vertex_indices" or "vertex_index" };
            if (isIndices && element.Name == "face") ReadPolygon(ref values, property);
            else if (isIndices && element.Name == "tristrips") ReadStrips(ref values, property);
            else if (property.CountType is not null) SkipList(ref values, property);
            else values.Next(property.Type);
        }
    }

    private void ReadPolygon<TValues>(ref TValues values, PlyProperty property)
        where TValues : IPlyValues, allows ref struct
    {
        ReadList(ref values, property);
        Faces.Add(CollectionsMarshal.AsSpan(_list));
        if (Faces.TriangleCount > request.Limits.Triangles) request.CheckTriangles(Faces.TriangleCount, values.Place);
    }

    /// <summary>Strips of triangles, each turned against the one before; -1 ends a strip.</summary>
    private void ReadStrips<TValues>(ref TValues values, PlyProperty property)
        where TValues : IPlyValues, allows ref struct
    {
        ReadList(ref values, property);
        int start = 0;
        for (int i = 0; i < _list.Count; i++)
        {
            if (_list[i] == -1) start = i + 1;
            if (i - start < 2) continue;
            bool turned = (i - start) % 2 == 1;
            Faces.Add([_list[i - 2], _list[turned ? i : i - 1], _list[turned ? i - 1 : i]]);
        }
        if (Faces.TriangleCount > request.Limits.Triangles) request.CheckTriangles(Faces.TriangleCount, values.Place);
    }

    private void ReadList<TValues>(ref TValues values, PlyProperty property)
        where TValues : IPlyValues, allows ref struct
    {
        long count = ListLength(ref values, property);
        _list.Clear();
        for (long i = 0; i < count; i++)
        {
            double number = values.Next(property.Type);
            if (number != Math.Floor(number) || Math.Abs(number) > int.MaxValue)
                throw request.Refuse(values.Place, "a vertex index is not a whole number");
            _list.Add((int)number);
        }
    }

    private void SkipList<TValues>(ref TValues values, PlyProperty property)
        where TValues : IPlyValues, allows ref struct
    {
        long count = ListLength(ref values, property);
        for (long i = 0; i < count; i++) values.Next(property.Type);
    }

    private long ListLength<TValues>(ref TValues values, PlyProperty property)
        where TValues : IPlyValues, allows ref struct
    {
        double length = values.Next(property.CountType!.Value);
        if (length >= 0 && length == Math.Floor(length) && length <= values.MostLeft(property.Type))
            return (long)length;
        throw request.Refuse(values.Place, "a list is longer than the file");
    }
}
