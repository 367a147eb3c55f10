using System.CommandLine;
using Platewright.Cli.Display;
using Platewright.Formats.Toml;
using Platewright.Machines;
using Platewright.Study.Interview;
using Spectre.Console;

namespace Platewright.Cli.Commands;

/// <summary>
/// <c>platewright machine new</c>: a machine file from what a person knows, each value with where it came from.
/// </summary>
internal static class MachineNewCommand
{
    private const string UsualFile = "my-machine.toml";

    public static Command Create(Screen screen, CancellationToken cancel)
    {
        Argument<string> file = new("FILE")
        {
            Arity = ArgumentArity.ZeroOrOne,
            DefaultValueFactory = _ => UsualFile,
            Description = "The file to write; an existing one is never touched.",
        };
        file.Validators.Add(Options.RefuseOptions);
        MachineNewOptions options = new();
        Command command = new(
            "new", "Write a machine file from what you know: asks on a terminal what the options leave open, and fills the rest "
            + "with typical values and their ranges.") { file };
        options.AddTo(command);
        command.SetAction(parsed =>
        {
            string path = parsed.GetRequiredValue(file);
            RefuseExisting(path);
            Questions? questions = screen.Asks ? new Questions(screen.Messages, screen.Input, cancel) : null;
            questions?.Say("Enter skips a question; what stays open is filled with typical values, each with its range.");
            (KnownMachine known, MeasuredJob? job) = options.Of(parsed, path, questions, cancel);
            FilledMachine filled = MachineFiller.Fill(known);
            if (job is not null) filled = JobCalibration.Fit(filled, job.Timing, job.Seconds);
            Save(path, filled);
            screen.Result.WriteLine($"Wrote {path.Replace('\\', '/')}: {filled.Machine.Ranges.Count} values are typical ones with a range.");
            Sentences.Write(screen.Result, "To check", filled.Notes);
            screen.Result.WriteLine($"See: platewright machine show {path.Replace('\\', '/')}");
            return ExitCode.Done;
        });
        return command;
    }

    private static void Save(string path, FilledMachine filled)
    {
        string text = MachineInterview.FileOf(filled);
        MachineFile.Parse(text, path);
        try
        {
            using FileStream stream = new(path, FileMode.CreateNew, FileAccess.Write);
            using StreamWriter writer = new(stream);
            writer.Write(text);
        }
        catch (DirectoryNotFoundException)
        {
            throw new DescriptionException(new DescriptionError("there is no such folder to write to.", path));
        }
    }

    private static void RefuseExisting(string path)
    {
        if (!path.EndsWith(".toml", StringComparison.OrdinalIgnoreCase))
            throw new DescriptionException(new DescriptionError("expected a file name that ends in .toml.", path));
        if (Path.Exists(path))
            throw new DescriptionException(new DescriptionError("exists already and is not touched; name another file.", path));
    }
}
