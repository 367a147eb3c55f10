using Platewright.Formats.Reading;
using Platewright.Geometry;

namespace Platewright.Formats.Amf;

/// <summary>Which objects of an AMF text are built, and where.</summary>
internal sealed class AmfPlacing(AmfModel model, ReadRequest request, NoteList notes)
{
    private readonly List<Vec3> _vertices = [];
    private readonly List<int> _corners = [];
    private readonly NestingCount<string> _count = new(request);
    private long _triangles;

    /// <param name="scale">Length of the file's unit, mm.</param>
    public List<ModelPart> Parts(double scale)
    {
        var placed = new HashSet<string>(
            model.Constellations.Values.SelectMany(c => c.Instances).Select(i => i.TargetId), StringComparer.Ordinal);
        CheckConstellations();
        var names = new NameList();
        var parts = new List<ModelPart>();
        foreach (AmfObject drawn in model.Objects.Values.Where(o => !placed.Contains(o.Id)))
            AddPart(drawn.Id, Matrix3.Identity, default, drawn.Place, scale, names, parts);
        foreach (AmfConstellation root in model.Constellations.Values.Where(c => !placed.Contains(c.Id)))
        {
            foreach (AmfInstance i in root.Instances)
                AddPart(i.TargetId, i.Rotation.ToMatrix(), i.Offset, i.Place, scale, names, parts);
        }
        if (parts.Count == 1) parts[0] = parts[0] with { Name = null };
        return parts;
    }

    /// <summary>Looks at every constellation: in a ring each lies in another, so none would be built.</summary>
    private void CheckConstellations()
    {
        foreach (AmfConstellation c in model.Constellations.Values) _count.Count(c.Id, c.Place, LookAt);
    }

    private (long Own, IEnumerable<(string, string)> Inner) LookAt(string id, string place)
    {
        if (model.Objects.TryGetValue(id, out AmfObject? drawn)) return (drawn.Mesh?.TriangleCount ?? 0, []);
        return model.Constellations.TryGetValue(id, out AmfConstellation? constellation)
            ? (0, constellation.Instances.Select(i => (i.TargetId, i.Place)))
            : throw request.Refuse(place, "the instance is of an object that does not exist");
    }

    private void AddPart(
        string target, Matrix3 linear, Vec3 offset, string place, double scale, NameList names, List<ModelPart> parts)
    {
        _triangles += _count.Count(target, place, LookAt);
        request.CheckTriangles(_triangles, place);
        _vertices.Clear();
        _corners.Clear();
        var looks = new List<(AmfMaterial Look, int Triangles)>();
        Add(target, linear * scale, offset * scale, looks);
        if (_corners.Count == 0) return;
        if (_vertices.Exists(p => !ReadRequest.IsInRange(p)))
            throw request.Refuse(place, "the object is too large", "check the unit");
        string? said = model.Objects.TryGetValue(target, out AmfObject? o) ? o.Name : model.Constellations[target].Name;
        string name = names.Unique(said ?? $"object {target}");
        AmfMaterial[] distinct = looks.GroupBy(l => l.Look).OrderByDescending(g => g.Sum(l => (long)l.Triangles))
            .Select(g => g.Key).ToArray();
        if (distinct.Length > 1)
        {
            notes.Add(
                "several_looks",
                $"“{name}” has {distinct.Length} materials or colours; it counts as that of most triangles.");
        }
        parts.Add(new ModelPart
        {
            Name = name,
            Mesh = new Mesh(_vertices.ToArray(), _corners.ToArray()),
            Material = distinct[0].Name,
            Colour = distinct[0].Colour,
        });
    }

    private void Add(string target, Matrix3 linear, Vec3 offset, List<(AmfMaterial, int)> looks)
    {
        request.Cancel.ThrowIfCancellationRequested();
        if (model.Objects.TryGetValue(target, out AmfObject? drawn))
        {
            if (drawn.Mesh is not { } mesh) return;
            int first = _vertices.Count;
            foreach (Vec3 p in mesh.Vertices) _vertices.Add(linear.Apply(p) + offset);
            foreach (int corner in mesh.Corners) _corners.Add(first + corner);
            looks.AddRange(drawn.Volumes.Select(v => (LookOf(v, drawn), v.Triangles)));
            return;
        }
        foreach (AmfInstance i in model.Constellations[target].Instances)
        {
            if (_count.Count(i.TargetId, i.Place, LookAt) > 0)
                Add(i.TargetId, linear * i.Rotation.ToMatrix(), linear.Apply(i.Offset) + offset, looks);
        }
    }

    private AmfMaterial LookOf(AmfVolume volume, AmfObject drawn)
    {
        AmfMaterial? material = volume.MaterialId is { } id ? model.Materials.GetValueOrDefault(id) : null;
        return new AmfMaterial(material?.Name, volume.Colour ?? drawn.Colour ?? material?.Colour);
    }
}
