namespace Platewright.Formats.ThreeMf;

/// <summary>One model part of a package, as its XML says it.</summary>
internal sealed class ThreeMfModel(string part)
{
    public string Part { get; } = part;

    public LengthUnit Unit { get; set; } = LengthUnit.Millimetre;

    public Dictionary<int, ThreeMfObject> Objects { get; } = [];

    public Dictionary<int, PropertyGroup> Groups { get; } = [];

    /// <summary>Null where there is no build element.</summary>
    public List<Placement>? Build { get; set; }

    /// <summary>The metadata by name; the first of a name counts.</summary>
    public Dictionary<string, string> Metadata { get; } = new(StringComparer.Ordinal);
}
