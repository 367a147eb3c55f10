using System.CommandLine;
using Platewright.Formats.Toml;
using Platewright.Machines;
using Platewright.Study.Interview;

namespace Platewright.Cli.Commands;

/// <summary>What <c>machine new</c> can be told by options; what they leave open is asked where someone can answer.</summary>
internal sealed class MachineNewOptions
{
    private readonly Option<string?> _name = Text("--name", "NAME", "What to call it (default: the file's name).");

    private readonly Option<string?> _size = Text(
        "--size", "X,Y,Z", "Build volume in mm: width, depth, height; or diameter, height of a round bed.");

    private readonly Option<string?> _program = Text(
        "--program", "FILE",
        "A ready motion program made for it: size, if not given, greatest speed and retraction are taken from it.");

    private readonly Option<string?> _enclosure = Text(
        "--enclosure", "open|closed", "Whether the build volume is closed against the room.");

    private readonly Option<string?> _watts = Text(
        "--watts", "N", "Watts on the label of its power supply, or \"bed N\" for those of the bed heater.");

    private readonly Option<string?> _bedMinutes = Text(
        "--bed-minutes", "N", "Minutes the bed takes from cold to --bed-c; none for a bed that is not heated.");

    private readonly Option<double?> _bedC = Options.Number("--bed-c", "°C", "Temperature that --bed-minutes means (default 60).");

    private readonly Option<string?> _job = Text(
        "--job", "FILE,TIME",
        "One job you timed, from start to finish: a model file or motion program, and h:min or N min, as bracket.stl,2:35.");

    private readonly Option<string> _recipe = new("--recipe")
    {
        HelpName = "R",
        DefaultValueFactory = _ => "use",
        Description = "The recipe that job was built with: a recipe file or a bundled one. A motion program needs none.",
    };

    private readonly Option<string> _material = new("--material")
    {
        HelpName = "T",
        DefaultValueFactory = _ => "PLA",
        Description = "What that job was built of.",
    };

    private readonly Option<string?> _price = Text("--price", "N CUR", "What it cost, as \"450 EUR\".");

    public void AddTo(Command command)
    {
        Option[] all = [_name, _size, _program, _enclosure, _watts, _bedMinutes, _bedC, _job, _recipe, _material, _price];
        foreach (Option option in all) command.Options.Add(option);
    }

    /// <param name="parsed">The command line.</param>
    /// <param name="path">The file to write, which names the machine where nothing else does.</param>
    /// <param name="questions">Null where nobody can be asked.</param>
    /// <param name="cancel">Stops the work.</param>
    /// <exception cref="DescriptionException">An answer is not right, or the size is not known.</exception>
    public (KnownMachine Known, MeasuredJob? Job) Of(ParseResult parsed, string path, Questions? questions, CancellationToken cancel)
    {
        Recipe recipe = RecipeCatalog.Find(parsed.GetRequiredValue(_recipe));
        Material material = MaterialCatalog.Get(parsed.GetRequiredValue(_material));
        string name = Checked(parsed.GetValue(_name) ?? Path.GetFileNameWithoutExtension(path));
        double? bedC = parsed.GetValue(_bedC);
        ProgramSeen? program = parsed.GetValue(_program) is { } file ? SeenProgram.Read(file, cancel) : null;
        BuildVolume? stated = Answer(
            _size, "1. How large can it build? Width, depth, height in mm, as 220,220,250; round: diameter, height.",
            MachineAnswers.Size);
        BuildVolume volume = stated ?? program?.LeastVolume()
            ?? throw new DescriptionException(new DescriptionError(
                "the size, or a --program, is needed; everything else may stay open.", Key: "--size"));
        string? closed = Answer(_enclosure, "2. Is it open or closed against the room?", t => MachineAnswers.Closed(t) ? "closed" : "open");
        Answered<(double Watts, bool OfBed)>? power = Answer(
            _watts, "3. How many watts? Those on the power supply's label, as 350, or the bed heater's, as bed 250.",
            t => new Answered<(double, bool)>(MachineAnswers.Power(t)));
        Answered<BedWarmUp?>? warmUp = Answer(
            _bedMinutes, "4. How many minutes does the bed take from cold? As 4 to 60 (°C); none if it is not heated.",
            t => new Answered<BedWarmUp?>(MachineAnswers.WarmUp(t, bedC)));
        MeasuredJob? job = Answer(
            _job, "5. One job you timed, from start to finish? Model or program and time, as bracket.stl, 2:35 "
            + $"(a model is taken as built of {material.Name} with the recipe {recipe.Id}).",
            t => MeasuredJob.Of(t, recipe, material, cancel));
        Price? price = Answer(_price, "6. What did it cost? As 450 EUR.", MachineAnswers.Price);
        return (new KnownMachine(name, volume)
        {
            Closed = closed is null ? null : closed == "closed",
            SupplyW = power is { Value.OfBed: false } ? power.Value.Watts : null,
            BedHeaterW = power is { Value.OfBed: true } ? power.Value.Watts : null,
            HeatedBed = warmUp is null or { Value: not null },
            BedWarmUp = warmUp?.Value,
            Price = price,
            Program = program,
            SizeFromProgram = stated is null,
        }, job);

        T? Answer<T>(Option<string?> option, string question, Func<string, T> read)
            where T : class => parsed.GetValue(option) is { } text ? read(text) : questions?.Ask(question, read);
    }

    private static string Checked(string name) => NameId.IsPossible(name)
        ? name
        : throw new DescriptionException(new DescriptionError("expected a name with a letter or a digit in it.", Key: "--name"));

    private static Option<string?> Text(string name, string help, string description) => new(name)
    {
        HelpName = help,
        Description = description,
    };

    /// <summary>An answer that may itself be nothing, or a plain value.</summary>
    private sealed record Answered<T>(T Value);
}
