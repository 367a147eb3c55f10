using System.CommandLine;
using Platewright.Cli.Display;
using Platewright.Formats.Programs;
using Platewright.Formats.Toml;
using Platewright.Machines;
using Platewright.Study.Documents;
using Platewright.Study.Learning;
using Platewright.Study.Pipeline;
using Platewright.Study.Store;

namespace Platewright.Cli.Commands;

/// <summary><c>platewright estimate MODEL… --machine M… --recipe R</c>: time, material and energy of each part on each machine.</summary>
internal static class EstimateCommand
{
    /// <summary>Where neither the command nor the recipe names a material: said, never silent.</summary>
    private const string UsualMaterial = "PLA";

    public static Command Create(Screen screen, CancellationToken cancel)
    {
        Argument<string[]> models = Options.Models();
        MachineChoice machines = new();
        ReadingChoice reading = new();
        Option<string?> recipe = new("--recipe")
        {
            HelpName = "R",
            Description = "A recipe file (.toml) or a bundled recipe (see: platewright recipe list). A motion program needs none.",
        };
        Option<string?> material = new("--material")
        {
            HelpName = "T",
            Description = "What the parts are made of, as PETG; without it the recipe's, else PLA.",
        };
        Option<double[]> bores = new("--bore")
        {
            HelpName = "MM",
            Description = "Try this nozzle bore besides the machine's own: beads and layers grow with it. May be repeated.",
        };
        Option<int?> colours = new("--colours")
        {
            HelpName = "N",
            Description = "How many colours each part has: changes of filament, their time and what they throw away are counted.",
        };
        Option<int?> colouredLayers = new("--coloured-layers")
        {
            HelpName = "N",
            Description = "In how many layers all colours lie (default: in all).",
        };
        Option<bool> full = new("--full") { Description = "Plan every layer instead of a sample; slower, without a sampling error." };
        Option<string?> storeFolder = Options.Store();
        Option<bool> json = Options.Json();
        Command command = new("estimate", "Say how long each part, or each motion program, takes on each machine, how much filament and how much energy.") { models };
        machines.AddTo(command);
        foreach (Option option in new Option[] { recipe, material, bores, colours, colouredLayers, full, storeFolder, json }) command.Options.Add(option);
        reading.AddTo(command);
        command.SetAction(parsed =>
        {
            Recipe? wanted = parsed.GetValue(recipe) is { } named ? RecipeCatalog.Find(named) : null;
            string[] files = parsed.GetRequiredValue(models);
            if (wanted is null && files.FirstOrDefault(f => !ProgramReader.IsProgram(f)) is { } model)
                throw new DescriptionException(new DescriptionError($"{model} is not a motion program: name a recipe.", Key: "--recipe"));
            IReadOnlyList<Machine> chosen = machines.Of(parsed);
            Require(chosen);
            string? name = parsed.GetValue(material) ?? wanted?.Material;
            if (name is null) screen.Error.WriteLine($"No material is named: {UsualMaterial} is taken. Name one with --material.");
            EstimateRun run = new(
                files, chosen, wanted, MaterialCatalog.Get(name ?? UsualMaterial),
                parsed.GetValue(full), reading.Of(parsed))
            {
                BoresMm = Bores(parsed.GetValue(bores) ?? []),
                Colours = AtLeastOne(colours, parsed.GetValue(colours)) ?? 1,
                ColouredLayers = AtLeastOne(colouredLayers, parsed.GetValue(colouredLayers)),
            };
            EstimatesDocument found = ProgressDisplay.During(screen, progress => run.Run(progress, cancel))
                .Corrected(chosen, LearnedMachines.Read(parsed.GetValue(storeFolder) ?? StoreFolder.Usual()));
            if (parsed.GetValue(json)) JsonOutput.Write(screen, found);
            else EstimateView.Write(found, screen);
            return ExitCode.For(found.Unusable.Count);
        });
        return command;
    }

    private static int? AtLeastOne(Option option, int? value) => value is < 1
        ? throw new DescriptionException(new DescriptionError($"expected a whole number above 0, found {value}.", Key: option.Name))
        : value;

    private static double[] Bores(double[] bores)
    {
        foreach (double bore in bores)
        {
            if (!(bore is > 0 and <= MostBoreMm))
            {
                throw new DescriptionException(new DescriptionError(
                    $"expected a bore above 0 and up to {MostBoreMm} mm, found {bore}.", Key: "--bore"));
            }
        }
        return bores;
    }

    private const double MostBoreMm = 10;

    private static void Require(IReadOnlyList<Machine> machines)
    {
        if (machines.Count == 0)
            throw new DescriptionException(new DescriptionError("name at least one machine with --machine."));
        foreach (Machine machine in machines)
        {
            if (machine.Motion is null)
            {
                throw new DescriptionException(new DescriptionError(
                    $"{machine.Name} states no motion limits, so no time can be estimated: add a [motion] table to its file.",
                    Key: "--machine"));
            }
        }
    }
}
