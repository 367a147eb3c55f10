using System.Text;
using Platewright.Formats.Reading;
using Platewright.Geometry;

namespace Platewright.Formats.Obj;

/// <summary>Where an object of an OBJ file begins.</summary>
internal sealed record ObjObject(string Name, int FirstFace);

/// <summary>The vertices (mm), faces and objects of an OBJ file.</summary>
internal sealed class ObjContent
{
    private const int LinesBetweenCancelChecks = 1 << 16;

    private readonly List<int> _polygon = [];

    public List<Vec3> Vertices { get; } = [];

    public PolygonSoup Faces { get; } = new();

    /// <summary>At least one; the first is what stands before any is named.</summary>
    public List<ObjObject> Objects { get; } = [new ObjObject("unnamed", 0)];

    public int FreeForm { get; private set; }

    public static ObjContent Parse(ReadOnlySpan<byte> text, double scale, ReadRequest request)
    {
        var content = new ObjContent();
        var scanner = new TextScanner(text);
        if (text.StartsWith("\uFEFF"u8)) scanner.Position = 3;
        for (int line = 0; !scanner.AtEnd; line++)
        {
            if (line % LinesBetweenCancelChecks == 0) request.Cancel.ThrowIfCancellationRequested();
            bool remark = false;
            if (scanner.TryWordOnLine(out ReadOnlySpan<byte> word))
            {
                remark = word[0] == '#';
                if (!remark) content.ReadStatement(word, ref scanner, scale, request);
            }
            scanner.SkipLine(joined: !remark);
        }
        return content;
    }

    private void ReadStatement(ReadOnlySpan<byte> word, ref TextScanner scanner, double scale, ReadRequest request)
    {
        if (word.SequenceEqual("v"u8)) ReadVertex(ref scanner, scale, request);
        else if (word.SequenceEqual("f"u8) || word.SequenceEqual("fo"u8)) ReadFace(ref scanner, request);
        else if (word.SequenceEqual("o"u8))
            Objects.Add(new ObjObject(Encoding.UTF8.GetString(scanner.TakeLine()), Faces.Count));
        else if (word.SequenceEqual("curv"u8) || word.SequenceEqual("surf"u8)) FreeForm++;
        else if (!IsPassedOver(word))
        {
            throw request.Refuse(
                $"line {scanner.LineOf(scanner.Position)}", $"{TextScanner.Show(word)} is no statement of an OBJ file");
        }
    }

    private void ReadVertex(ref TextScanner scanner, double scale, ReadRequest request)
    {
        scanner.TryWordOnLine(out ReadOnlySpan<byte> x);
        double xMm = TextNumber.Coordinate(x, ref scanner, scale, request);
        scanner.TryWordOnLine(out ReadOnlySpan<byte> y);
        double yMm = TextNumber.Coordinate(y, ref scanner, scale, request);
        scanner.TryWordOnLine(out ReadOnlySpan<byte> z);
        double zMm = TextNumber.Coordinate(z, ref scanner, scale, request);
        Vertices.Add(new Vec3(xMm, yMm, zMm));
    }

    private void ReadFace(ref TextScanner scanner, ReadRequest request)
    {
        _polygon.Clear();
        while (scanner.TryWordOnLine(out ReadOnlySpan<byte> word))
        {
            if (word[0] == '#') break;
            _polygon.Add(VertexOf(word, ref scanner, request));
        }
        Faces.Add(System.Runtime.InteropServices.CollectionsMarshal.AsSpan(_polygon));
        if (Faces.TriangleCount > request.Limits.Triangles)
            request.CheckTriangles(Faces.TriangleCount, $"line {scanner.LineOf(scanner.Position)}");
    }

    /// <summary>
    /// The vertex of a corner written v, v/vt, v//vn or v/vt/vn, counted from 1 or back from the latest (-1).
    /// </summary>
    private int VertexOf(ReadOnlySpan<byte> word, ref TextScanner scanner, ReadRequest request)
    {
        int slash = word.IndexOf((byte)'/');
        ReadOnlySpan<byte> index = slash < 0 ? word : word[..slash];
        if (!int.TryParse(index, System.Globalization.NumberStyles.AllowLeadingSign, null, out int number))
        {
            throw request.Refuse(
                $"line {scanner.LineOf(scanner.Position)}", $"{TextScanner.Show(word)} is not a corner of a face");
        }
        int vertex = number < 0 ? Vertices.Count + number : number - 1;
        if ((uint)vertex < (uint)Vertices.Count) return vertex;
        throw request.Refuse(
            $"line {scanner.LineOf(scanner.Position)}",
            $"the face has vertex {number}, but {Vertices.Count} vertices stand before it");
    }

    private static bool IsPassedOver(ReadOnlySpan<byte> word) => Encoding.ASCII.GetString(word) is
        "vt" or "vn" or "vp" or "g" or "s" or "usemtl" or "mtllib" or "l" or "p" or "mg" or "usemap" or "maplib" or
        "bevel" or "c_interp" or "d_interp" or "lod" or "shadow_obj" or "trace_obj" or "call" or "csh" or
        "cstype" or "deg" or "bmat" or "step" or "curv2" or "parm" or "trim" or "hole" or "scrv" or "sp" or "end" or
        "con" or "ctech" or "stech" or "bsp" or "bzp" or "cdc" or "cdp" or "res";
}
