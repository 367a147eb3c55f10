using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;
using Platewright.Machines;
using Platewright.Server.Answers;
using Platewright.Server.Shelf;
using Platewright.Study.Documents;

namespace Platewright.Server.Endpoints;

/// <summary>Materials, recipes and the schemas that forms are made from.</summary>
internal static class NameEndpoints
{
    private static readonly string[] Schemas = ["study", "machine", "recipe"];

    public static void Map(IEndpointRouteBuilder api)
    {
        api.MapGet("/names", (Library library) => Answer.Of(new NamesDocument(
                [.. MaterialCatalog.Bundled.Select(m => new NamedDocument(m.Name, Summaries.Of(m), Own: false))],
                [
                    .. library.Recipes.All().Select(r => new NamedDocument(r.Id, Summaries.Of(r), Own: true)),
                    .. RecipeCatalog.Bundled.Select(r => new NamedDocument(r.Id, Summaries.Of(r), Own: false)),
                ])))
            .Named("listNames", "Materials and recipes, each in one sentence.").Produces<NamesDocument>();

        api.MapGet("/recipes/{recipe}", (string recipe, Library library) =>
                (library.Recipes.TextOf(recipe) ?? RecipeCatalog.BundledText(recipe)) is { } text
                    ? Answer.Of(MachineEndpoints.Describe(text))
                    : Refused.Missing($"There is no recipe \"{recipe}\" here."))
            .Named("readRecipe", "A recipe file.").Produces<SettingsDocument>().Refuses(404);

        api.MapPut("/recipes/{recipe}", (string recipe, NewSettingsDocument wanted, Library library) =>
            {
                Recipe kept = library.Recipes.Keep(MachineEndpoints.TextOf(wanted), library.Recipes.TextOf(recipe) is null ? null : recipe);
                return Answer.Of(new NamedDocument(kept.Id, Summaries.Of(kept), Own: true));
            })
            .Named("keepRecipe", "Keeps a recipe file of the user's own.").Produces<NamedDocument>().Refuses(422);

        api.MapGet("/schemas/{schema}", (string schema) => Schemas.Contains(schema)
                ? Results.Stream(typeof(NameEndpoints).Assembly.GetManifestResourceStream($"schema.{schema}.schema.json")!, "application/schema+json")
                : Refused.Missing($"\"{schema}\" is not one of {string.Join(", ", Schemas)}."))
            .Named("readSchema", "The JSON schema of study, machine or recipe files.").Produces(StatusCodes.Status200OK, contentType: "application/schema+json").Refuses(404);
    }
}
