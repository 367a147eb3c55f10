using System.Text;
using Spectre.Console;

namespace Platewright.Cli;

/// <summary>Where a command speaks: results to standard output, progress and messages to standard error.</summary>
internal sealed class Screen
{
    // Wide enough that nothing wraps in a pipe, where a line is a line.
    private const int EndlessColumns = 100_000;
    private const int LeastColumns = 80;
    private const int PipedColumns = 120;

    private Screen(
        TextReader input, TextWriter output, TextWriter error, bool inputPiped, bool outputPiped, bool errorPiped)
    {
        Input = input;
        Asks = !inputPiped && !errorPiped;
        Output = output;
        Error = error;
        Result = Console(output, outputPiped);
        Messages = Console(error, errorPiped);
        Columns = outputPiped ? PipedColumns : Math.Max(LeastColumns, Result.Profile.Width);
        DrawsProgress = !errorPiped;
    }

    /// <summary>What is typed.</summary>
    public TextReader Input { get; }

    /// <summary>Whether someone sits there who can be asked.</summary>
    public bool Asks { get; }

    public TextWriter Output { get; }

    public TextWriter Error { get; }

    /// <summary>Standard output with colours where it is a terminal.</summary>
    public IAnsiConsole Result { get; }

    /// <summary>Standard error with colours where it is a terminal.</summary>
    public IAnsiConsole Messages { get; }

    /// <summary>Width to lay tables out for, at least 80.</summary>
    public int Columns { get; }

    /// <summary>Whether standard error can redraw a line.</summary>
    public bool DrawsProgress { get; }

    public static Screen OfConsole()
    {
        var utf8 = new UTF8Encoding(encoderShouldEmitUTF8Identifier: false);
        System.Console.OutputEncoding = utf8;
        return new Screen(
            System.Console.In, System.Console.Out, System.Console.Error, System.Console.IsInputRedirected,
            System.Console.IsOutputRedirected, System.Console.IsErrorRedirected);
    }

    private static IAnsiConsole Console(TextWriter writer, bool piped)
    {
        IAnsiConsole console = AnsiConsole.Create(new AnsiConsoleSettings
        {
            Out = new AnsiConsoleOutput(writer),
            Ansi = piped ? AnsiSupport.No : AnsiSupport.Detect,
            ColorSystem = piped ? ColorSystemSupport.NoColors : ColorSystemSupport.Detect,
            Interactive = piped ? InteractionSupport.No : InteractionSupport.Detect,
        });
        if (piped) console.Profile.Width = EndlessColumns;
        return console;
    }
}
