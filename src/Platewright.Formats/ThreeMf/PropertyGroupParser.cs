using Platewright.Formats.Reading;
using Platewright.Formats.Xml;

namespace Platewright.Formats.ThreeMf;

/// <summary>
/// Base materials (core specification) and the groups of the materials extension. Textures and mixtures say neither a
/// material nor a colour for a part, but their indices are still checked.
/// </summary>
internal static class PropertyGroupParser
{
    /// <summary>The group the walk stands on; null where the element is none.</summary>
    public static PropertyGroup? Parse(XmlWalk walk, IReadOnlyDictionary<int, PropertyGroup> earlier)
    {
        if (walk.Attribute("id") is not { } id) return null;
        return walk.Name switch
        {
            "basematerials" => Group(walk, id, "base", () => BaseMaterial(walk)),
            "colorgroup" => Group(walk, id, "color", () => new Look(null, Colours.FromHex(walk.Attribute("color")))),
            "texture2dgroup" => Group(walk, id, "tex2coord", () => default),
            "compositematerials" => Group(walk, id, "composite", () => default),
            "multiproperties" => MultiProperties(walk, id, earlier),
            // Of the drafts: one colour, one material that refers to it; neither has an index.
            "color" => new PropertyGroup(walk.Index(id), [new Look(null, Colours.FromHex(walk.Attribute("value")))]),
            "material" => DraftMaterial(walk, id, earlier),
            _ => new PropertyGroup(walk.Index(id), null),
        };
    }

    private static PropertyGroup Group(XmlWalk walk, string id, string child, Func<Look> look)
    {
        int group = walk.Index(id);
        var looks = new List<Look>();
        int entered = walk.Enter();
        while (walk.NextChild(entered))
        {
            if (walk.Name == child) looks.Add(look());
        }
        return new PropertyGroup(group, looks);
    }

    private static Look BaseMaterial(XmlWalk walk) =>
        new(walk.Attribute("name") is { Length: > 0 } name
            ? name
            : null, Colours.FromHex(walk.Attribute("displaycolor")));

    /// <summary>Each property is one of each group in <c>pids</c>; the first that says a thing counts.</summary>
    private static PropertyGroup MultiProperties(
        XmlWalk walk, string id, IReadOnlyDictionary<int, PropertyGroup> earlier)
    {
        int[] groups = Indices(walk, walk.Attribute("pids"));
        return Group(walk, id, "multi", () =>
        {
            int[] indices = Indices(walk, walk.Attribute("pindices"));
            var look = default(Look);
            for (int i = 0; i < groups.Length; i++)
            {
                // An index that is left out is 0 (materials extension, multiproperties).
                int index = i < indices.Length ? indices[i] : 0;
                if (!earlier.TryGetValue(groups[i], out PropertyGroup? group) || group.Looks is not { } looks) continue;
                if (index >= looks.Count) throw walk.Refuse($"the property {index} is not in group {groups[i]}");
                look = new Look(look.Material ?? looks[index].Material, look.Colour ?? looks[index].Colour);
            }
            return look;
        });
    }

    private static PropertyGroup DraftMaterial(XmlWalk walk, string id, IReadOnlyDictionary<int, PropertyGroup> earlier)
    {
        Look look = walk.Attribute("colorid") is { } colour
            && earlier.TryGetValue(walk.Index(colour), out PropertyGroup? group) && group.Looks is [Look said, ..]
                ? said
                : default;
        return new PropertyGroup(walk.Index(id), [look]);
    }

    private static int[] Indices(XmlWalk walk, string? list) =>
        (list ?? "").Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries).Select(i => walk.Index(i)).ToArray();
}
