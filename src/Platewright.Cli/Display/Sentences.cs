using Spectre.Console;

namespace Platewright.Cli.Display;

/// <summary>A titled list of sentences, indented; nothing where there are none.</summary>
internal static class Sentences
{
    private const int Most = 100;
    private const int Indent = 2;

    public static void Write(IAnsiConsole console, string title, IEnumerable<string> sentences)
    {
        string[] lines = [.. sentences];
        if (lines.Length == 0) return;
        console.WriteLine();
        console.MarkupLineInterpolated($"[bold]{title}[/]");
        foreach (string line in lines.Take(Most)) WriteOne(console, line);
        if (lines.Length > Most) console.WriteLine($"  … and {lines.Length - Most} more; --json has them all.");
    }

    public static void WriteOne(IAnsiConsole console, string sentence) =>
        console.Write(new Padder(new Text(sentence), new Padding(Indent, 0, 0, 0)));
}
