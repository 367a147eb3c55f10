using Platewright.Formats.Xml;

namespace Platewright.Formats.ThreeMf;

/// <summary>
/// Whether a property exists: the core specification makes every reference name an existing resource.
/// </summary>
internal static class PropertyReferences
{
    public static void Check(PropertyReference property, ThreeMfModel model, XmlWalk walk)
    {
        if (!model.Groups.TryGetValue(property.Group, out PropertyGroup? group))
            throw walk.Refuse($"there is no property group {property.Group}");
        if (group.Looks is { } looks && property.Index >= looks.Count)
            throw walk.Refuse($"there is no property {property.Index}, group {property.Group} has {looks.Count}");
    }
}
