using System.Globalization;
using Platewright.Study.Documents;
using Spectre.Console;

namespace Platewright.Cli.Display;

/// <summary>Which machine or mix the work needs, as text: the decision sheet, then the numbers behind it.</summary>
internal sealed class SizingView(StudyDocument study, IAnsiConsole console, int columns)
{
    public void Write()
    {
        if (study.Sizing is not { } sizing) return;
        WriteSheet(sizing.Sheet);
        new SizingTables(study, sizing, console, columns).Write();
    }

    private void WriteSheet(SheetDocument sheet)
    {
        if (sheet.Recommendation.Count == 0) return;
        console.WriteLine();
        console.MarkupLineInterpolated($"[bold]{sheet.Title}[/]");
        foreach (SentenceDocument sentence in sheet.Recommendation) console.MarkupLineInterpolated($"  [bold]{sentence.Text}[/]");
        Section("Why", sheet.Reasons);
        Section("What will not be possible", sheet.NotPossible);
        Section("How sure this is", sheet.Doubt);
        Section("What else would do", sheet.Alternatives);
        Section("Reckoned with", sheet.Assumptions);
        Section("Take care", sheet.Cautions);
    }

    private void Section(string title, IReadOnlyList<SentenceDocument> sentences) =>
        Sentences.Write(console, title, sentences.Select(s => s.Text));

    internal static string Invariant(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
