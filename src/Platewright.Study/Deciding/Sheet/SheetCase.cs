using Platewright.Study.Documents;
using static Platewright.Study.Deciding.Sheet.Value;

namespace Platewright.Study.Deciding.Sheet;

/// <summary>What the sentences of a sheet are about, and where it stands in study.json.</summary>
internal sealed class SheetCase
{
    private const double ShareSlack = 1e-9;
    private readonly SheetWriter _writer;

    public SheetCase(StudyDocument study, SizingDocument sizing)
    {
        Study = study;
        Sizing = sizing;
        _writer = new SheetWriter(study, sizing);
        Aimed = Level();
        Main = Chosen();
    }

    public StudyDocument Study { get; }

    public SizingDocument Sizing { get; }

    /// <summary>Index of the level that holds the aimed share and that a listed machine reaches; −1 where none does.</summary>
    public int Aimed { get; }

    /// <summary>Index of the machine that the answer is mostly about.</summary>
    public int Main { get; }

    public MachineSizingDocument MainSizing => Sizing.Machines[Main];

    public string MainAt => $"/sizing/machines/{Main}";

    /// <summary>Pointer to the measure that counts projects, of the main machine; null where it has none.</summary>
    public string? MeasureAt => Index(MainSizing.Coverage, m => m.Measure == "projects" && m.CanMake is not null) is >= 0 and int m
        ? $"{MainAt}/coverage/{m}"
        : null;

    /// <summary>The share of projects that the main machine can make.</summary>
    public ValueDocument Made =>
        Percent(MeasureAt is { } at ? $"{at}/can_make" : $"/machines/{Main}/coverage/can_make/share");

    /// <summary>All projects that are counted.</summary>
    public Phrase Work => Projects("/sizing/workload/projects", Sizing.Workload.Projects);

    public SentenceDocument Say(FormattableString text) => _writer.Say(text);

    public static ValueDocument Name(int machine) => Text($"/machines/{machine}/name");

    public ValueDocument Named(string id) => Name(IndexOf(id));

    /// <exception cref="ArgumentException">There is no such machine.</exception>
    public int IndexOf(string id) => Index(Study.Machines, m => m.Id == id) is >= 0 and int i
        ? i
        : throw new ArgumentException($"The study has no machine \"{id}\".", nameof(id));

    /// <summary>As "3 projects" or "1 project".</summary>
    public static Phrase Projects(string at, int count) =>
        count == 1 ? Phrase.Of($"{Count(at)} project") : Phrase.Of($"{Count(at)} projects");

    /// <summary>As "2 × generic 210 enclosed and 1 × generic 350".</summary>
    public static Phrase Machines(string at, IReadOnlyList<MixMachineDocument> machines, Func<MixMachineDocument, bool>? which = null) =>
        Phrase.List([.. Enumerable.Range(0, machines.Count).Where(i => machines[i].Count > 0 && which?.Invoke(machines[i]) != false).Select(i => One($"{at}/{i}", machines[i]))]);

    /// <summary>Each order with the place of the main machine in its answers.</summary>
    public IEnumerable<(int Order, int On)> OnMain() =>
        Sizing.Orders.Select((o, i) => (i, Index(o.On, m => m.Machine == MainSizing.Machine))).Where(o => o.Item2 >= 0);

    /// <summary>Whether two sets are the same machines.</summary>
    public static bool Same(IReadOnlyList<MixMachineDocument> a, IReadOnlyList<MixMachineDocument> b) =>
        Counted(a).SetEquals(Counted(b));

    private static HashSet<(string, int)> Counted(IReadOnlyList<MixMachineDocument> machines) =>
        [.. machines.Where(m => m.Count > 0).Select(m => (m.Machine, m.Count))];

    public static int Index<T>(IReadOnlyList<T> list, Func<T, bool> which)
    {
        for (int i = 0; i < list.Count; i++)
            if (which(list[i])) return i;
        return -1;
    }

    private static Phrase One(string at, MixMachineDocument m) => m.Owned > 0 && m.Owned < m.Count
        ? Phrase.Of($"{Count($"{at}/count")} × {Text($"{at}/name")} ({Count($"{at}/owned")} there already)")
        : Phrase.Of($"{Count($"{at}/count")} × {Text($"{at}/name")}");

    private int Level() => Index(Sizing.Levels, l => l.Share >= Sizing.Aim.CoverShare - ShareSlack && l.Listed is not null);

    /// <summary>Share of projects that a machine can make.</summary>
    public double CanMake(int machine) =>
        Sizing.Machines[machine].Coverage.FirstOrDefault(m => m.Measure == "projects")?.CanMake
        ?? Study.Machines[machine].Coverage.CanMake.Share;

    private int Chosen()
    {
        if (Sizing.Mix is { } mix && mix.Machines.Any(m => m.Count > 0))
            return IndexOf(mix.Machines.Where(m => m.Count > 0).OrderByDescending(m => m.HoursUsed).First().Machine);
        if (Aimed >= 0) return IndexOf(Sizing.Levels[Aimed].Listed!);
        return Enumerable.Range(0, Study.Machines.Count).OrderByDescending(CanMake).First();
    }
}
