namespace Platewright.Formats.ThreeMf;

/// <summary>A resource that triangles may refer to by index.</summary>
/// <param name="Looks">What each of its properties says; null where the kind of group is not known.</param>
internal sealed record PropertyGroup(int Id, IReadOnlyList<Look>? Looks);

/// <summary>A material's name and #RRGGBB; each null where the property does not say.</summary>
internal readonly record struct Look(string? Material, string? Colour);
