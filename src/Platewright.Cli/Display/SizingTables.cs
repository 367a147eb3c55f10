using Platewright.Study.Documents;
using Spectre.Console;
using static Platewright.Cli.Display.SizingView;
using static Platewright.Cli.Display.TextGrid;

namespace Platewright.Cli.Display;

/// <summary>The numbers behind the decision sheet, table by table; a table without a row is left out.</summary>
internal sealed class SizingTables(StudyDocument study, SizingDocument sizing, IAnsiConsole console, int columns)
{
    private const string Unknown = "–";
    private const int MostFront = 12;

    // From here on nobody asks for cents: own choice, no source.
    private const decimal WholeFrom = 100;

    private readonly Dictionary<string, string> _names = study.Machines.ToDictionary(m => m.Id, m => m.Name, StringComparer.Ordinal);

    public void Write()
    {
        Levels();
        Larger();
        PerMonth();
        Front();
        SameMoney();
        Orders();
        TurnRound();
        SelfMaking();
        Sensitivity();
    }

    private void Levels() => Table(
        "What covers how much of the projects", ["projects", "smallest here", "smallest bundled", "cube", "decided by"],
        sizing.Levels.Select(l => new Cell[]
        {
            Invariant($"{100 * l.Share:0} % ({l.Projects})"), l.Listed is { } id ? _names[id] : Unknown, l.Bundled ?? Unknown,
            l.CubeMm is { } cube ? Invariant($"{cube:0} mm") : Unknown, l.DecidedBy ?? Unknown,
        }));

    private void Larger()
    {
        Table(
            "What the larger one adds", ["", "gained", "lost", "points", "hours a month", "price"],
            sizing.Larger.Select(l => new Cell[]
            {
                $"{_names[l.Larger]} over {_names[l.Smaller]}", Invariant($"{l.Gained}"), Invariant($"{l.Lost}"),
                Invariant($"{100 * l.Share:0} ({100 * l.Low:0} to {100 * l.High:0})"), l.HoursPerMonth is { } h ? Invariant($"{h:0.#}") : Unknown,
                Money(l.Price),
            }));
        foreach (LargerDocument l in sizing.Larger) Sentences.WriteOne(console, l.Sentence);
    }

    private void PerMonth() => Table(
        $"Cost per month of all it can make, {sizing.Currency}",
        ["", "machines", "owning", "energy", "filament", "failed", "total", "range", "first year"],
        sizing.Machines.Where(m => m.PerMonth is not null).Select(m => (Machine: m, Cost: m.PerMonth!)).Select(m => new Cell[]
        {
            _names[m.Machine.Machine], Invariant($"{m.Machine.Needed}"), Amount(Owning(m.Cost)), Amount(m.Cost.Energy), Amount(m.Cost.Filament),
            Amount(m.Cost.FailedBuilds), Amount(m.Cost.Total),
            m.Machine is { LowPerMonth: { } low, HighPerMonth: { } high } ? Invariant($"{low:0.00} to {high:0.00}") : Unknown,
            m.Machine.FirstYear is { } year ? Invariant($"{year:#,0}") : Unknown,
        }));

    private static decimal Owning(CostDocument c) => c.Purchase + c.PrintedParts + c.Assembling + c.Tuning + c.OwningTax;

    private void Front()
    {
        Table(
            "Sets of machines that no other beats in everything", ["", "covers", "a month", "turn-round", "floor", "peak"],
            sizing.Front.Take(MostFront).Select(f => new Cell[]
            {
                Set(f.Counts), Invariant($"{100 * f.Covered:0} %"), Money(f.PerMonth), Invariant($"{f.TurnRoundH:0.#} h"),
                Invariant($"{f.FloorM2:0.##} m²"), Invariant($"{f.PeakW:0} W"),
            }));
        if (sizing.Front.Count > MostFront) console.WriteLine($"… and {sizing.Front.Count - MostFront} more: see study.json.");
    }

    private void SameMoney() => Table(
        "For the same money", ["", "price", "can make", "parts a week", "with one down", "first in hand", "all in hand"],
        sizing.SameMoney.SelectMany(s => new[] { s.One, s.Many }).Select(s => new Cell[]
        {
            $"{s.Count} × {_names[s.Machine]}", Money(s.Price), $"{s.CanMake} of {s.Projects}",
            s.PartsPerWeek is { } week ? Invariant($"{week:0.#}") : Unknown, Invariant($"{s.OneDownPartsPerWeek:0.#}"),
            Time(s.FirstInHandS), Time(s.AllInHandS),
        }));

    private void Orders()
    {
        foreach (OrderDocument order in sizing.Orders)
        {
            Table(
                $"{order.Copies} × {order.Project} from {order.From} by {order.By}", ["", "in time", "done by then", "last in hand", "machines needed", "held up by"],
                order.On.Select(on => new Cell[]
                {
                    _names[on.Machine], on.CanMake ? on.InTime ? new Cell("yes", "green") : new Cell("no", "red") : "cannot make it",
                    Invariant($"{on.Done}"), Time(on.LastInHandS), on.LeastMachines is { } least ? Invariant($"{least}") : Unknown,
                    on.Limit == "none" ? "" : on.Limit.Replace('_', ' '),
                }));
        }
    }

    private void TurnRound() => Table(
        $"From a changed model to the part in hand{(Turned() is { } part ? $": {part}" : "")}",
        ["", "mean", "best", "worst", "warm-up", "build", "release", "changes a day"],
        sizing.Machines.Where(m => m.TurnRound is not null).Select(m => (m.Machine, Turn: m.TurnRound!)).Select(m => new Cell[]
        {
            _names[m.Machine], Time(m.Turn.MeanS), Time(m.Turn.BestS), Time(m.Turn.WorstS), Time(m.Turn.WarmUpS), Time(m.Turn.BuildS),
            Time(m.Turn.ReleaseS), Invariant($"{m.Turn.IterationsPerDay} ({m.Turn.Fewest} to {m.Turn.Most})"),
        }));

    private string? Turned() => sizing.Machines.Select(m => m.TurnRound?.Part).FirstOrDefault(p => p is not null);

    private void SelfMaking() => Sentences.Write(console, "Printed parts of a machine", sizing.SelfMaking.Select(s => s switch
    {
        { Alone.Count: > 0 } => $"{s.Of}, {s.Parts} parts: made whole by {string.Join(", ", s.Alone.Select(id => _names[id]))}.",
        { Together.Count: > 0 } => $"{s.Of}, {s.Parts} parts: made by {string.Join(", or ", s.Together.Select(Together))}.",
        _ => $"{s.Of}, {s.Parts} parts: no machine here makes {string.Join(", ", s.Missing)}.",
    }));

    private string Together(IReadOnlyList<string> machines) => string.Join(" with ", machines.Select(id => _names[id]));

    private void Sensitivity() => Table(
        "What each assumption would change", ["assumption", "low to high", "a month", "changes the answer"],
        sizing.Sensitivity.Select(s => new Cell[]
        {
            s.What, Invariant($"{s.Low:0.###} to {s.High:0.###}"), Invariant($"{s.LowPerMonth:0.00} to {s.HighPerMonth:0.00}"),
            s.Changes ? new Cell("yes", "yellow") : "no",
        }));

    private void Table(string title, string[] head, IEnumerable<Cell[]> rows)
    {
        Cell[][] all = [.. rows];
        if (all.Length == 0) return;
        console.WriteLine();
        console.MarkupLineInterpolated($"[bold]{title}[/]");
        TextGrid grid = new(columns);
        grid.Add([.. head.Select(h => new Cell(h, "bold"))]);
        foreach (Cell[] row in all) grid.Add(row);
        grid.Write(console);
    }

    private static string Set(IReadOnlyList<MixMachineDocument> machines) => machines.Any(m => m.Count > 0)
        ? string.Join(" and ", machines.Where(m => m.Count > 0).Select(m => $"{m.Count} × {m.Name}"))
        : "none";

    private string Money(decimal? amount) => amount is { } known
        ? $"{(Math.Abs(known) >= WholeFrom ? Invariant($"{known:#,0}") : Amount(known))} {sizing.Currency}"
        : Unknown;

    private static string Amount(decimal amount) => Invariant($"{amount:0.00}");

    private static string Time(double? seconds) => seconds is { } known ? DurationText.Of(known) : Unknown;
}
