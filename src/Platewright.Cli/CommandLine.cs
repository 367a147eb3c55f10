using System.CommandLine;
using Platewright.Cli.Commands;
using Platewright.Formats.Toml;
using Platewright.Study.Store;

namespace Platewright.Cli;

/// <summary>The command <c>platewright</c>: parse, run, turn what went wrong into a sentence and an exit code.</summary>
internal static class CommandLine
{
    private const string About =
        "Says which desktop material-extrusion machine your parts need: a folder of models in, a proved fit verdict for " +
        "every part on every machine out.";

    public static int Run(string[] args, Screen screen, CancellationToken cancel)
    {
        ParseResult parsed = Root(screen, cancel).Parse(args);
        if (parsed.Errors.Count > 0)
        {
            foreach (string error in parsed.Errors.Select(e => e.Message).Distinct(StringComparer.Ordinal)) screen.Error.WriteLine(error);
            screen.Error.WriteLine($"Try: {Path(parsed)} --help");
            return ExitCode.WrongUsage;
        }
        try
        {
            return parsed.Invoke(new InvocationConfiguration { EnableDefaultExceptionHandler = false, ProcessTerminationTimeout = null });
        }
        catch (OperationCanceledException)
        {
            screen.Error.WriteLine("Interrupted. What was finished is kept; the same command goes on from there.");
            return ExitCode.Interrupted;
        }
        catch (Exception e) when (e is DescriptionException or StoreException or IOException or UnauthorizedAccessException)
        {
            screen.Error.WriteLine(e.Message);
            return ExitCode.WrongUsage;
        }
#pragma warning disable CA1031 // The last line of defence: the user gets a sentence, not a stack trace.
        catch (Exception e)
        {
            screen.Error.WriteLine($"Bug in Platewright ({e.GetType().Name}: {e.Message}). Please report it with the command you gave.");
            return ExitCode.Fault;
        }
#pragma warning restore CA1031
    }

    private static RootCommand Root(Screen screen, CancellationToken cancel) => new(About)
    {
        InspectCommand.Create(screen, cancel),
        FitCommand.Create(screen, cancel),
        EstimateCommand.Create(screen, cancel),
        LearnCommand.Create(screen, cancel),
        StudyCommand.Create(screen, cancel),
        ServeCommand.Create(screen, cancel),
        VerifyCommand.Create(screen),
        MachineCommand.Create(screen, cancel),
        RecipeCommand.Create(screen),
    };

    private static string Path(ParseResult parsed) =>
        parsed.CommandResult.Command is RootCommand ? "platewright" : $"platewright {parsed.CommandResult.Command.Name}";
}
