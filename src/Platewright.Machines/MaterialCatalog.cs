using System.Collections.Immutable;
using Platewright.Formats.Toml;

namespace Platewright.Machines;

/// <summary>
/// The bundled filament families. Needs are the low end of the usual range: a machine that does not reach them cannot
/// make the material well; one that does may still need care. Shrinkage is what is usually compensated, none for PLA,
/// PETG and TPU. The brim is 3 mm or less for families that lie flat and 5 to 10 mm for those that warp. A study file
/// may state its own.
/// </summary>
public static class MaterialCatalog
{
    /// <summary>In alphabetical order.</summary>
    public static ImmutableArray<Material> Bundled => BundledMaterials.All;

    /// <summary>
    /// The material of that name, case aside: the user's own before the bundled ones; null where there is none.
    /// </summary>
    public static Material? Find(string name, IEnumerable<Material>? own = null) =>
        All(own).FirstOrDefault(m => string.Equals(m.Name, name.Trim(), StringComparison.OrdinalIgnoreCase));

    /// <summary>What to tell who named a material that is not known.</summary>
    public static string UnknownSentence(string name, IEnumerable<Material>? own = null)
    {
        string[] names = [.. All(own).Select(m => m.Name).Distinct(StringComparer.OrdinalIgnoreCase)];
        return $"no material is called \"{name}\".{Suggestion.Sentence(name, names)} "
            + $"Known: {string.Join(", ", names)}; a study file can add its own under [[material]].";
    }

    /// <summary>The material of that name, for an argument of the command line.</summary>
    /// <exception cref="DescriptionException">There is none.</exception>
    public static Material Get(string name) =>
        Find(name) ?? throw new DescriptionException(new DescriptionError(UnknownSentence(name), Key: "--material"));

    private static IEnumerable<Material> All(IEnumerable<Material>? own) => (own ?? []).Concat(Bundled);
}
