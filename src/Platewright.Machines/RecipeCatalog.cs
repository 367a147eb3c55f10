using System.Collections.Immutable;
using Platewright.Formats.Toml;

namespace Platewright.Machines;

/// <summary>Finds recipes: the bundled ones by id or name, the user's own by their files.</summary>
public static class RecipeCatalog
{
    /// <summary>The bundled recipes, finest layers first. Typical values: common practice, no source.</summary>
    public static ImmutableArray<Recipe> Bundled { get; } =
    [
        .. BundledFiles.Read("BundledRecipes", RecipeFile.Parse)
            .Select(r => r with { Bundled = true })
            .OrderBy(r => r.LayerHeightMm)
            .ThenBy(r => r.Walls),
    ];

    /// <summary>What is taken where no recipe is named: everyday parts.</summary>
    public static Recipe Usual { get; } = FindBundled("use")!;

    /// <summary>A bundled recipe by id or name, case aside, or the recipe of a TOML file.</summary>
    /// <exception cref="DescriptionException">There is no such recipe, or its file is not right.</exception>
    public static Recipe Find(string nameOrPath)
    {
        if (FindBundled(nameOrPath) is { } bundled) return bundled;
        if (MachineCatalog.LooksLikePath(nameOrPath) || File.Exists(nameOrPath)) return RecipeFile.Read(nameOrPath);
        throw new DescriptionException(new DescriptionError(UnknownSentence(nameOrPath)));
    }

    /// <summary>A bundled recipe by id or name, case aside; null where there is none.</summary>
    public static Recipe? FindBundled(string name) => Bundled.FirstOrDefault(r =>
        string.Equals(r.Id, name, StringComparison.OrdinalIgnoreCase)
        || string.Equals(r.Name, name, StringComparison.OrdinalIgnoreCase));

    /// <summary>The file of a bundled recipe, as a start for one's own; null where there is none of that id.</summary>
    public static string? BundledText(string id) => BundledFiles.Text("BundledRecipes", $"{id}.toml");

    /// <summary>What to tell who named a recipe that is not bundled.</summary>
    public static string UnknownSentence(string name)
    {
        string[] ids = [.. Bundled.Select(r => r.Id)];
        return $"no bundled recipe is called \"{name}\".{Suggestion.Sentence(name, ids)} "
            + $"Name a recipe file that ends in .toml, or one of: {string.Join(", ", ids)}.";
    }
}
