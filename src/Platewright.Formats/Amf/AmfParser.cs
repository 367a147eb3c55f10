using Platewright.Formats.Reading;
using Platewright.Formats.Xml;
using Platewright.Geometry;

namespace Platewright.Formats.Amf;

/// <summary>Reads the XML of an AMF text.</summary>
internal sealed class AmfParser : IDisposable
{
    private readonly XmlWalk _walk;
    private readonly ReadRequest _request;
    private readonly AmfModel _model = new();

    private AmfParser(ReadOnlyMemory<byte> xml, string? part, ReadRequest request)
    {
        _walk = new XmlWalk(xml, part, request);
        _request = request;
    }

    public static AmfModel Parse(ReadOnlyMemory<byte> xml, string? part, ReadRequest request)
    {
        using var parser = new AmfParser(xml, part, request);
        parser.ParseRoot();
        return parser._model;
    }

    public void Dispose() => _walk.Dispose();

    private void ParseRoot()
    {
        _walk.MoveToRoot();
        if (!_walk.Name.Equals("amf", StringComparison.OrdinalIgnoreCase)) throw _walk.Refuse("it is not an AMF text");
        if (_walk.Attribute("unit") is { } unit)
            _model.Unit = LengthUnits.Named(unit)
                ?? throw _walk.Refuse($"{XmlNumbers.Shown(unit)} is not a unit of AMF");
        long triangles = 0;
        int entered = _walk.Enter();
        while (_walk.NextChild(entered))
        {
            switch (_walk.Name)
            {
                case "metadata":
                    AmfText.TakeMetadata(_walk, _model.Metadata);
                    break;
                case "material":
                    ParseMaterial();
                    break;
                case "object":
                    triangles += ParseObject(triangles);
                    break;
                case "constellation":
                    ParseConstellation();
                    break;
            }
        }
    }

    private int ParseObject(long before)
    {
        string place = _walk.Place;
        string id = _walk.Required("id");
        var metadata = new Dictionary<string, string>(StringComparer.OrdinalIgnoreCase);
        string? colour = null;
        var mesh = new AmfMeshParser(_walk, _model, _request, before);
        int entered = _walk.Enter();
        while (_walk.NextChild(entered))
        {
            if (_walk.Name == "metadata") AmfText.TakeMetadata(_walk, metadata);
            else if (_walk.Name is "color" or "colour") colour = AmfText.TakeColour(_walk);
            else if (_walk.Name == "mesh") mesh.Parse();
        }
        Mesh? built = mesh.Build();
        var parsed = new AmfObject(id, metadata.GetValueOrDefault("name"), colour, built, mesh.Volumes, place);
        if (!_model.Objects.TryAdd(id, parsed) || _model.Constellations.ContainsKey(id)) throw SameId(place, id);
        return built?.TriangleCount ?? 0;
    }

    private void ParseMaterial()
    {
        string id = _walk.Required("id");
        var metadata = new Dictionary<string, string>(StringComparer.OrdinalIgnoreCase);
        string? colour = null;
        int entered = _walk.Enter();
        while (_walk.NextChild(entered))
        {
            if (_walk.Name == "metadata") AmfText.TakeMetadata(_walk, metadata);
            else if (_walk.Name is "color" or "colour") colour = AmfText.TakeColour(_walk);
        }
        _model.Materials.TryAdd(id, new AmfMaterial(metadata.GetValueOrDefault("name"), colour));
    }

    private void ParseConstellation()
    {
        string place = _walk.Place;
        string id = _walk.Required("id");
        var metadata = new Dictionary<string, string>(StringComparer.OrdinalIgnoreCase);
        var instances = new List<AmfInstance>();
        int entered = _walk.Enter();
        while (_walk.NextChild(entered))
        {
            if (_walk.Name == "metadata") AmfText.TakeMetadata(_walk, metadata);
            else if (_walk.Name == "instance") instances.Add(ParseInstance());
        }
        var parsed = new AmfConstellation(id, metadata.GetValueOrDefault("name"), instances, place);
        if (!_model.Constellations.TryAdd(id, parsed) || _model.Objects.ContainsKey(id)) throw SameId(place, id);
    }

    private AmfInstance ParseInstance()
    {
        string place = _walk.Place;
        string target = _walk.Required("objectid");
        double dx = 0, dy = 0, dz = 0, rx = 0, ry = 0, rz = 0;
        int entered = _walk.Enter();
        while (_walk.NextChild(entered))
        {
            switch (_walk.Name)
            {
                case "deltax": dx = AmfText.TakeNumber(_walk); break;
                case "deltay": dy = AmfText.TakeNumber(_walk); break;
                case "deltaz": dz = AmfText.TakeNumber(_walk); break;
                case "rx": rx = AmfText.TakeNumber(_walk); break;
                case "ry": ry = AmfText.TakeNumber(_walk); break;
                case "rz": rz = AmfText.TakeNumber(_walk); break;
                case "metadata": break;
                default: throw _walk.Refuse("this way of placing an instance is not understood", "export it without");
            }
        }
        return new AmfInstance(target, new Vec3(rx, ry, rz), new Vec3(dx, dy, dz), place);
    }

    private ModelFileException SameId(string place, string id) =>
        _request.Refuse(place, $"two objects have the id {XmlNumbers.Shown(id)}");
}
