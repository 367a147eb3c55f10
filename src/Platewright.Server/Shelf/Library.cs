using Platewright.Machines;

namespace Platewright.Server.Shelf;

/// <summary>The user's own machines and recipes, for all studies of the app.</summary>
internal sealed class Library(string store)
{
    public OwnDescriptions<Machine> Machines { get; } =
        new(Path.Combine(Path.GetFullPath(store), "machines"), MachineFile.Parse, m => m.Id);

    public OwnDescriptions<Recipe> Recipes { get; } =
        new(Path.Combine(Path.GetFullPath(store), "recipes"), RecipeFile.Parse, r => r.Id);
}
