using Platewright.Formats.Reading;
using Platewright.Geometry;

namespace Platewright.Formats.Ply;

/// <summary>
/// PLY, ASCII or binary of either byte order: faces and triangle strips over vertices; all else is passed over.
/// </summary>
internal static class PlyReader
{
    public static ModelFile Read(ModelBytes bytes, ReadRequest request)
    {
        ReadOnlySpan<byte> content = bytes.All(request).Span;
        PlyHeader header = PlyHeader.Parse(content, request);
        (LengthUnit unit, UnitSource source) = request.UnitOr(stated: null);
        var body = new PlyBody(unit.ToMillimetres(), request);
        if (header.Encoding == PlyEncoding.Ascii)
        {
            var values = new PlyTextValues(content, header.BodyOffset, request);
            body.Read(ref values, header);
        }
        else
        {
            var values = new PlyBinaryValues(
                content, header.BodyOffset, header.Encoding == PlyEncoding.BigEndian, request);
            body.Read(ref values, header);
        }
        Mesh mesh = body.ToMesh();
        var notes = new NoteList();
        if (body.Faces.TooSmall > 0)
            notes.Add("small_faces", $"{body.Faces.TooSmall} faces with fewer than three corners were passed over.");
        return new ModelFile
        {
            File = request.File,
            Format = ModelFormat.Ply,
            Unit = unit,
            UnitSource = source,
            Parts = [new ModelPart { Mesh = mesh }],
            Notes = notes.Notes,
        };
    }
}
