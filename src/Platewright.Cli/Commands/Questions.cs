using Platewright.Formats.Toml;
using Spectre.Console;

namespace Platewright.Cli.Commands;

/// <summary>Asks on a terminal, one line each; an empty answer skips, a wrong one is asked again.</summary>
internal sealed class Questions(IAnsiConsole console, TextReader input, CancellationToken cancel)
{
    private bool _ended;

    /// <summary>The answer, or null where it was skipped.</summary>
    /// <param name="question">The question with an example.</param>
    /// <param name="read">Reads the answer or refuses it.</param>
    public T? Ask<T>(string question, Func<string, T> read)
        where T : class
    {
        while (!_ended)
        {
            console.MarkupLineInterpolated($"[bold]{question}[/]");
            console.Write("> ");
            string? line = NextLine();
            if (line is null) _ended = true;
            if (string.IsNullOrWhiteSpace(line)) return null;
            try
            {
                return read(line);
            }
            catch (DescriptionException e)
            {
                foreach (DescriptionError error in e.Errors) console.WriteLine(error.Message);
            }
        }
        return null;
    }

    public void Say(string sentence) => console.WriteLine(sentence);

    // Reading a line does not end on an interruption; waiting for it does.
    private string? NextLine() => Task.Run(input.ReadLine, CancellationToken.None).WaitAsync(cancel).GetAwaiter().GetResult();
}
