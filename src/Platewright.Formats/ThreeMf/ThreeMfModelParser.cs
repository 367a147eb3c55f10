using Platewright.Formats.Reading;
using Platewright.Formats.Xml;

namespace Platewright.Formats.ThreeMf;

/// <summary>Reads the XML of one model part (3MF core specification 1.3, chapters 3 to 5).</summary>
internal sealed class ThreeMfModelParser : IDisposable
{
    private readonly XmlWalk _walk;
    private readonly ReadRequest _request;
    private readonly ThreeMfModel _model;

    private ThreeMfModelParser(ReadOnlyMemory<byte> xml, string part, ReadRequest request)
    {
        _walk = new XmlWalk(xml, part, request);
        _request = request;
        _model = new ThreeMfModel(part);
    }

    public static ThreeMfModel Parse(ReadOnlyMemory<byte> xml, string part, ReadRequest request)
    {
        using var parser = new ThreeMfModelParser(xml, part, request);
        parser.ParseModel();
        return parser._model;
    }

    public void Dispose() => _walk.Dispose();

    private void ParseModel()
    {
        _walk.MoveToRoot();
        if (_walk.Name != "model" || !Namespaces.IsCore(_walk.Namespace)) throw _walk.Refuse("it is not a 3MF model");
        if (_walk.Attribute("unit") is { } unit)
            _model.Unit = UnitNamed(unit) ?? throw _walk.Refuse($"{XmlNumbers.Shown(unit)} is not a unit of 3MF");
        CheckRequiredExtensions();
        int entered = _walk.Enter();
        while (_walk.NextChild(entered))
        {
            if (!Namespaces.IsCore(_walk.Namespace)) continue;
            if (_walk.Name == "metadata") ParseMetadata();
            else if (_walk.Name == "resources") ParseResources();
            else if (_walk.Name == "build") ParseBuild();
        }
    }

    /// <summary>The six units of the core specification; no other spelling counts.</summary>
    private static LengthUnit? UnitNamed(string unit) =>
        unit is "micron" or "millimeter" or "centimeter" or "inch" or "foot" or "meter"
            ? LengthUnits.Named(unit)
            : null;

    private void CheckRequiredExtensions()
    {
        string[] prefixes = (_walk.Attribute("requiredextensions") ?? "")
            .Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries);
        foreach (string prefix in prefixes)
        {
            string? name = _walk.NamespaceOf(prefix);
            if (name is null) throw _walk.Refuse($"the required extension {XmlNumbers.Shown(prefix)} is not declared");
            if (name == Namespaces.SecureContent)
                throw _walk.Refuse("its content is encrypted (secure content extension)", "ask for a copy that is not");
            if (!Namespaces.IsUnderstood(name))
            {
                throw _walk.Refuse(
                    $"it requires the extension {XmlNumbers.Shown(prefix)} ({name}), which is not understood",
                    "export it without");
            }
        }
    }

    private void ParseMetadata()
    {
        string? name = _walk.Attribute("name");
        string value = _walk.Text();
        if (name is not null && value.Length > 0) _model.Metadata.TryAdd(name, value);
    }

    private void ParseResources()
    {
        int entered = _walk.Enter();
        while (_walk.NextChild(entered))
        {
            if (_walk.Name == "object" && Namespaces.IsCore(_walk.Namespace))
            {
                ThreeMfObject parsed = ParseObject();
                if (_model.Groups.ContainsKey(parsed.Id) || !_model.Objects.TryAdd(parsed.Id, parsed))
                    throw _walk.Refuse($"two resources have the id {parsed.Id}");
            }
            else if (
                PropertyGroupParser.Parse(_walk, _model.Groups) is { } group && !_model.Groups.TryAdd(group.Id, group))
            {
                throw _walk.Refuse($"two resources have the id {group.Id}");
            }
        }
    }

    private ThreeMfObject ParseObject()
    {
        int id = _walk.Index(_walk.Required("id"));
        var parsed = new ThreeMfObject
        {
            Id = id,
            Name = NullIfBlank(_walk.Attribute("name")) ?? NullIfBlank(_walk.Attribute("partnumber")),
            Type = ParseType(),
            IsLowResolution = _walk.Attribute("meshresolution", Namespaces.Slices) == "lowres",
        };
        PropertyReference? property = ParseObjectProperty();
        bool found = false;
        int entered = _walk.Enter();
        while (_walk.NextChild(entered))
        {
            if (!Namespaces.IsCore(_walk.Namespace)) continue;
            if (_walk.Name == "mesh")
            {
                var mesh = new MeshParser(_walk, _model, _request, property);
                parsed = parsed with { Mesh = mesh.Parse(), Properties = mesh.Properties, Beams = mesh.Beams };
                found = true;
            }
            else if (_walk.Name == "components")
            {
                parsed = parsed with { Components = ParsePlacements("component") };
                found = true;
            }
        }
        if (!found) throw _walk.Refuse($"object {id} has neither a mesh nor components");
        if (parsed.Mesh is null && parsed.Components.Count == 0 && parsed.Beams == 0)
            throw _walk.Refuse($"object {id} holds no triangles");
        return parsed;
    }

    private ObjectType ParseType() => (_walk.Attribute("type") ?? "model") switch
    {
        "model" => ObjectType.Model,
        "solidsupport" => ObjectType.SolidSupport,
        "support" => ObjectType.Support,
        "surface" => ObjectType.Surface,
        "other" => ObjectType.Other,
        { } type => throw _walk.Refuse($"{XmlNumbers.Shown(type)} is not a type of object"),
    };

    private PropertyReference? ParseObjectProperty()
    {
        // The drafts name a material without an index.
        string? group = _walk.Attribute("pid") ?? _walk.Attribute("materialid");
        if (group is null) return null;
        var property = new PropertyReference(_walk.Index(group), _walk.Index(_walk.Attribute("pindex") ?? "0"));
        PropertyReferences.Check(property, _model, _walk);
        return property;
    }

    private void ParseBuild()
    {
        if (_model.Build is not null) throw _walk.Refuse("there are two build elements");
        _model.Build = ParsePlacements("item");
    }

    private List<Placement> ParsePlacements(string element)
    {
        var placements = new List<Placement>();
        int entered = _walk.Enter();
        while (_walk.NextChild(entered))
        {
            if (_walk.Name != element || !Namespaces.IsCore(_walk.Namespace)) continue;
            string? path = _walk.Attribute("path", Namespaces.Production);
            placements.Add(new Placement(
                path is null ? _model.Part : PartNames.Resolve("", path),
                _walk.Index(_walk.Required("objectid")),
                TransformParser.Parse(_walk),
                _walk.Place));
        }
        return placements;
    }

    private static string? NullIfBlank(string? text) => string.IsNullOrWhiteSpace(text) ? null : text.Trim();
}
