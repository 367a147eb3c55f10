using Platewright.Study.Documents;
using Spectre.Console;
using static Platewright.Cli.Display.TextGrid;

namespace Platewright.Cli.Display;

/// <summary>A study as text: the headline, machines, projects and parts × machines, coverage, what decides it, notes.</summary>
internal sealed class StudyView(StudyDocument study, IAnsiConsole console, int columns)
{
    internal const int MostRows = 200;
    private const int MostDeciding = 6;
    internal const int NameColumns = 18;

    private readonly Dictionary<string, PartDocument> _parts = study.Parts.ToDictionary(p => p.Id, StringComparer.Ordinal);

    public void Write()
    {
        console.MarkupLine($"[bold]{Markup.Escape(study.Headline)}[/]");
        WriteVerdicts();
        WriteCoverage();
        WriteDeciding();
        new BuildsView(study, console, columns).Write();
        new SizingView(study, console, columns).Write();
        Sentences.Write(console, "Findings", Findings());
        Sentences.Write(console, "Alike", study.Alike.Select(a => a.Message));
        Sentences.Write(console, "Not used", study.Unusable.Select(u => u.Error));
        Sentences.Write(console, "Keep in mind", study.Notes);
    }

    private void WriteVerdicts()
    {
        if (study.Projects.Count == 0) return;
        int atOnce = Math.Max(1, (columns - NameColumns) / VerdictCell.Columns);
        foreach (int[] shown in Enumerable.Range(0, study.Machines.Count).Chunk(atOnce)) WriteVerdicts(shown);
        console.WriteLine();
        console.MarkupLine($"[dim]{VerdictCell.Legend}[/]");
    }

    private void WriteVerdicts(int[] machines)
    {
        console.WriteLine();
        foreach (int m in machines) console.MarkupLineInterpolated($"[bold]{Letter(m)}[/]  {MachineLine(study.Machines[m])}");
        console.WriteLine();
        TextGrid grid = new(columns);
        grid.Add([new Cell("project, part", "bold"), .. machines.Select(m => new Cell(Letter(m), "bold"))]);
        Cell[][] rows = [.. study.Projects.SelectMany(p => Rows(p, machines))];
        foreach (Cell[] row in rows.Take(MostRows)) grid.Add(row);
        grid.Write(console);
        if (rows.Length > MostRows) console.WriteLine($"… and {rows.Length - MostRows} more rows: see parts.csv.");
    }

    private IEnumerable<Cell[]> Rows(ProjectDocument project, int[] machines)
    {
        PartDocument[] parts = [.. project.Parts.Select(id => _parts[id])];
        PartDocument? only = parts.Length == 1 ? parts[0] : null;
        yield return
        [
            Name(project.Name, project.Wanted, only?.Quantity ?? 1),
            .. machines.Select(m => only is null ? Of(project.Verdicts[m], m) : Of(only.Fits[m])),
        ];
        if (only is not null) yield break;
        foreach (PartDocument part in parts)
            yield return [$"  {Name(part.Name, part.Wanted, part.Quantity)}", .. machines.Select(m => Of(part.Fits[m]))];
    }

    private void WriteCoverage()
    {
        if (study.Projects.Count == 0) return;
        console.WriteLine();
        string confidence = $"{100 * study.Options.Confidence:0.#} %";
        console.MarkupLineInterpolated(
            $"[bold]Coverage[/] of {study.Projects.Count} {(study.Projects.Count == 1 ? "project" : "projects")}, each share with its {confidence} interval");
        TextGrid grid = new(columns);
        grid.Add("", new Cell("fits", "bold"), new Cell("compromise", "bold"), new Cell("does not", "bold"), new Cell("can make", "bold"));
        for (int m = 0; m < study.Machines.Count; m++)
        {
            CoverageDocument c = study.Machines[m].Coverage;
            grid.Add($"{Letter(m)}  {study.Machines[m].Name}", Share(c.Fits), Share(c.Compromise), Share(c.No), Share(c.CanMake));
        }
        grid.Write(console);
    }

    private void WriteDeciding()
    {
        string[] lines =
        [
            .. study.Machines.Select((m, i) => (Letter: Letter(i), Parts: m.Coverage.DecidingParts))
                .Where(m => m.Parts.Count > 0)
                .Select(m => $"{m.Letter}: {string.Join("; ", m.Parts.Take(MostDeciding).Select(id => _parts[id].Name))}" +
                    (m.Parts.Count > MostDeciding ? $" and {m.Parts.Count - MostDeciding} more" : "")),
        ];
        Sentences.Write(console, "Parts that decide it", lines);
    }

    private IEnumerable<string> Findings() => study.Parts.SelectMany(p => p.Findings.Select(f => $"{p.Name}: {f.Message}"));

    // The scale or the number of pieces is that of the part that decides.
    private Cell Of(ProjectVerdictDocument v, int machine)
    {
        PartFitDocument? decides = v.DecidedBy is { } id ? _parts[id].Fits[machine] : null;
        string cell = VerdictCell.Of(v.Verdict, v.CountsAs, v.Tight, v.CanMake, decides?.Pose.Scale, decides?.Pieces ?? 0);
        return new Cell(cell, VerdictCell.Colour(v.CountsAs));
    }

    private static Cell Of(PartFitDocument f) =>
        new(VerdictCell.Of(f.Verdict, f.CountsAs, f.Tight, f.CanMake, f.Pose.Scale, f.Pieces), VerdictCell.Colour(f.CountsAs));

    private static string Name(string name, bool wanted, int quantity) =>
        $"{name}{(quantity > 1 ? $" × {quantity}" : "")}{(wanted ? " (wanted)" : "")}";

    private static string Share(ShareDocument s) => $"{100 * s.Share:0} % ({100 * s.Low:0}–{100 * s.High:0})";

    private static string MachineLine(MachineDocument m) => $"{m.Name}, {BuildVolumeText.Of(m.BuildVolume)}";

    // A, B … Z, A2, B2 …
    internal static string Letter(int index) => $"{(char)('A' + index % 26)}{(index < 26 ? "" : index / 26 + 1)}";
}
