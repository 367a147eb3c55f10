using System.Collections.Immutable;
using Platewright.Formats.Toml;
using Platewright.Machines;
using Platewright.Sizing.Cases;

namespace Platewright.Study;

/// <summary>Reads <c>[aim]</c>, <c>[[order]]</c> and <c>[[same_money]]</c>: what is asked, and the limits of the answer.</summary>
internal sealed class AimReader(ImmutableArray<Machine> machines)
{
    private static readonly NumberRange Share = NumberRange.Positive(1);

    private static readonly NumberRange Floor = NumberRange.Positive(100_000, "m²");

    private static readonly NumberRange Circuit = NumberRange.Positive(10_000_000, "W");

    private static readonly NumberRange Noise = new(0, 140, "dB");

    private const int MostMachines = 1000;

    private const int MostCopies = 1_000_000;

    /// <param name="root">The study file.</param>
    /// <param name="inCurrency">An amount in the currency of the costs.</param>
    public Aim Read(TomlTable root, Func<TomlTable, Price, decimal?> inCurrency)
    {
        if (root.Table("aim") is not { } aim) return Aim.None;
        decimal? budget = aim.Table("budget") is { } money && MoneyReader.Price(money) is { } price ? inCurrency(money, price) : null;
        return new Aim(
            aim.Number("cover_share", Share) ?? Aim.UsualShare,
            budget,
            aim.Number("floor_m2", Floor),
            aim.Number("circuit_w", Circuit),
            aim.Number("loudest_db", Noise),
            aim.Count("most_machines", 1, MostMachines),
            [.. (aim.Texts("owned") ?? []).Select(t => MachineId(aim, t.Text, t.Place)).OfType<string>()]);
    }

    public static ImmutableArray<OrderPlan> Orders(TomlTable root, ImmutableArray<PlannedProject> projects) =>
        [.. root.Tables("order").Select(t => Order(t, projects)).OfType<OrderPlan>()];

    public ImmutableArray<SameMoneyPlan> SameMoney(TomlTable root) =>
        [.. root.Tables("same_money").Select(SameMoneyOf).OfType<SameMoneyPlan>()];

    private static OrderPlan? Order(TomlTable table, ImmutableArray<PlannedProject> projects)
    {
        string? project = table.Text("project", required: true);
        int? copies = table.Count("copies", 1, MostCopies, required: true);
        double? from = Moment(table, "from"), by = Moment(table, "by");
        if (project is not null && !projects.Any(p => string.Equals(p.Name, project, StringComparison.OrdinalIgnoreCase)))
        {
            string near = Suggestion.Sentence(project, projects.Select(p => p.Name));
            table.Refuse("project", $"no project is called \"{project}\".{near}");
        }
        if (project is null || copies is not { } count || from is not { } start || by is not { } end) return null;
        // Friday to Tuesday is the Tuesday after.
        const double Week = 7 * 86_400;
        return new OrderPlan(project, count, start, end > start ? end : end + Week, table.Place);
    }

    private static double? Moment(TomlTable table, string key)
    {
        if (table.Text(key, required: true) is not { } text) return null;
        double? moment = WeekTimes.Moment(text);
        if (moment is null) table.Refuse(key, $"expected a day and a time as \"friday 16:00\", found \"{text}\".");
        return moment;
    }

    private SameMoneyPlan? SameMoneyOf(TomlTable table)
    {
        string? one = table.Text("one", required: true), many = table.Text("many", required: true);
        int? count = table.Count("count", 1, MostMachines);
        string? oneId = one is null ? null : MachineId(table, one, table.PlaceOf("one"));
        string? manyId = many is null ? null : MachineId(table, many, table.PlaceOf("many"));
        if (oneId is null || manyId is null) return null;
        if (oneId == manyId) table.Refuse("many", "expected another machine than the one it is compared with.");
        return new SameMoneyPlan(oneId, manyId, count);
    }

    /// <summary>Id of a machine of the study; null, with an error, where none is called so.</summary>
    private string? MachineId(TomlTable table, string name, TomlPlace at)
    {
        string id = NameId.Of(name);
        if (machines.Any(m => m.Id == id)) return id;
        string near = Suggestion.Sentence(id, machines.Select(m => m.Id));
        table.Refuse(at, $"no machine of the study is called \"{name}\".{near}");
        return null;
    }
}
