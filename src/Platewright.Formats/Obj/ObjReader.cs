using System.Runtime.InteropServices;
using Platewright.Formats.Reading;
using Platewright.Geometry;

namespace Platewright.Formats.Obj;

/// <summary>
/// OBJ: vertices and faces. Each object (<c>o</c>) with faces is a part; groups (<c>g</c>) only sort the faces of a
/// part and do not divide it. Textures, normals, colours, lines, points and free-form surfaces are passed over.
/// </summary>
internal static class ObjReader
{
    public static ModelFile Read(ModelBytes bytes, ReadRequest request)
    {
        (LengthUnit unit, UnitSource source) = request.UnitOr(stated: null);
        ObjContent content = ObjContent.Parse(bytes.All(request).Span, unit.ToMillimetres(), request);
        if (content.Faces.Count == 0) throw request.RefuseEmpty();
        return new ModelFile
        {
            File = request.File,
            Format = ModelFormat.Obj,
            Unit = unit,
            UnitSource = source,
            Parts = Parts(content),
            Notes = Notes(content),
        };
    }

    private static List<ModelPart> Parts(ObjContent content)
    {
        ReadOnlySpan<Vec3> vertices = CollectionsMarshal.AsSpan(content.Vertices);
        var compaction = new Compaction(vertices.Length);
        var names = new NameList();
        var parts = new List<ModelPart>();
        for (int i = 0; i < content.Objects.Count; i++)
        {
            ObjObject drawn = content.Objects[i];
            int end = i + 1 < content.Objects.Count ? content.Objects[i + 1].FirstFace : content.Faces.Count;
            if (end == drawn.FirstFace) continue;
            Mesh mesh = content.Faces.ToMesh(vertices, drawn.FirstFace, end, compaction);
            parts.Add(new ModelPart { Name = names.Unique(drawn.Name), Mesh = mesh });
        }
        if (parts.Count == 1) parts[0] = parts[0] with { Name = null };
        return parts;
    }

    private static List<ModelNote> Notes(ObjContent content)
    {
        var notes = new List<ModelNote>();
        if (content.Faces.TooSmall > 0)
        {
            notes.Add(new ModelNote(
                "small_faces", $"{content.Faces.TooSmall} faces with fewer than three corners were passed over."));
        }
        if (content.FreeForm > 0)
            notes.Add(new ModelNote("free_form", $"{content.FreeForm} free-form curves or surfaces were passed over."));
        return notes;
    }
}
