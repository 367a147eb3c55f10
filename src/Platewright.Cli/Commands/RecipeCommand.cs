using System.CommandLine;
using System.Globalization;
using Platewright.Cli.Display;
using Platewright.Machines;
using static Platewright.Cli.Display.TextGrid;

namespace Platewright.Cli.Commands;

/// <summary><c>platewright recipe list</c> and <c>recipe show R</c>.</summary>
internal static class RecipeCommand
{
    public static Command Create(Screen screen) => new("recipe", "List the bundled recipes, or show one recipe.")
    {
        List(screen), Show(screen),
    };

    private static Command List(Screen screen)
    {
        Command command = new("list", "The bundled recipes: typical values, common practice.");
        command.SetAction(_ =>
        {
            TextGrid grid = new(screen.Columns);
            grid.Add(new Cell("id", "bold"), new Cell("layer", "bold"), new Cell("walls", "bold"), new Cell("infill", "bold"), new Cell("for", "bold"));
            foreach (Recipe r in RecipeCatalog.Bundled)
                grid.Add(r.Id, RecipeText.Mm(r.LayerHeightMm), Number(r.Walls), RecipeText.Share(r.InfillShare), r.Purpose ?? "");
            grid.Write(screen.Result);
            return ExitCode.Done;
        });
        return command;
    }

    private static Command Show(Screen screen)
    {
        Argument<string> name = new("RECIPE") { Description = "A recipe file (.toml) or a bundled recipe." };
        name.Validators.Add(Options.RefuseOptions);
        Command command = new("show", "What one recipe asks for.") { name };
        command.SetAction(parsed =>
        {
            Recipe recipe = RecipeCatalog.Find(parsed.GetRequiredValue(name));
            TextGrid grid = new(screen.Columns);
            foreach ((string what, string value) in RecipeText.Rows(recipe)) grid.Add(what, value);
            grid.Write(screen.Result);
            return ExitCode.Done;
        });
        return command;
    }

    private static string Number(int count) => count.ToString(CultureInfo.InvariantCulture);
}
