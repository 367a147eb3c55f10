using Platewright.Formats.Packs;
using Platewright.Formats.Reading;
using Platewright.Formats.Xml;

namespace Platewright.Formats.ThreeMf;

/// <summary>
/// The model parts of a 3MF package, found through its relationships and read when they are asked for.
/// </summary>
internal sealed class ThreeMfPackage(ZipPack pack, ReadRequest request)
{
    private readonly Dictionary<string, ThreeMfModel> _models = new(StringComparer.OrdinalIgnoreCase);

    /// <summary>The model part the package starts from (core specification, section 2.1.1).</summary>
    public ThreeMfModel Root()
    {
        const string relationships = "_rels/.rels";
        ZipPackEntry entry = pack.Find(relationships)
            ?? throw request.Refuse(relationships, "the package has no relationships, so it is not a 3MF file");
        string root = ModelTarget(entry)
            ?? throw request.Refuse(relationships, "no relationship leads to a 3D model part");
        return Model(root, relationships);
    }

    /// <summary>The model part of that name.</summary>
    /// <param name="askedAt">Where the package refers to it.</param>
    public ThreeMfModel Model(string part, string askedAt)
    {
        if (_models.TryGetValue(part, out ThreeMfModel? known)) return known;
        ZipPackEntry entry = pack.Find(part)
            ?? throw request.Refuse(askedAt, $"there is no part “{part}” in the package");
        return _models[part] = ThreeMfModelParser.Parse(pack.UnpackPart(entry), part, request);
    }

    private string? ModelTarget(ZipPackEntry entry)
    {
        using var walk = new XmlWalk(pack.UnpackPart(entry), entry.Name, request);
        walk.MoveToRoot();
        int entered = walk.Enter();
        while (walk.NextChild(entered))
        {
            if (walk.Name == "Relationship" && walk.Attribute("Type") == Namespaces.ModelRelationship)
                return PartNames.Resolve("", walk.Required("Target"));
        }
        return null;
    }
}
