using Platewright.Study.Documents;
using static Platewright.Study.Deciding.Sheet.Value;

namespace Platewright.Study.Deciding.Sheet;

/// <summary>What will not be possible.</summary>
internal static class Lacking
{
    private const int NamesShown = 4;
    private const int OrdersSaid = 2;

    public static IEnumerable<SentenceDocument> Of(SheetCase sheet)
    {
        yield return NotMade(sheet);
        if (Rules(sheet) is { } rules) yield return rules;
        if (sheet.Sizing.Place?.LongestRunH is not null)
            yield return sheet.Say($"No build that takes more than {Hours("/sizing/place/longest_run_h")} with its warm-up can ever run here.");
        foreach (SentenceDocument late in Late(sheet).Take(OrdersSaid)) yield return late;
    }

    private static SentenceDocument NotMade(SheetCase sheet)
    {
        string at = $"/machines/{sheet.Main}/coverage";
        if (sheet.Sizing.Mix is not { } mix)
        {
            return sheet.MainSizing is var _ && sheet.Study.Machines[sheet.Main].Coverage is { } c && c.CanMake.Count == c.Projects
                ? sheet.Say($"Nothing in this study is beyond {SheetCase.Name(sheet.Main)}.")
                : sheet.Say($"{SheetCase.Name(sheet.Main)} makes {Count($"{at}/can_make/count")} of {SheetCase.Projects($"{at}/projects", sheet.Study.Machines[sheet.Main].Coverage.Projects)}; the others stay undone.");
        }
        int named = mix.NotMade.Count > NamesShown + 1 ? NamesShown : mix.NotMade.Count;
        if (named == 0) return sheet.Say($"Nothing in this study stays undone.");
        Phrase[] names = [.. Enumerable.Range(0, named).Select(n => Phrase.Of($"{Text($"/sizing/mix/not_made/{n}")}"))];
        return named < mix.NotMade.Count
            ? sheet.Say($"Not made: {Phrase.List([.. names, Phrase.Of($"others")])}.")
            : sheet.Say($"Not made: {Phrase.List(names)}.");
    }

    private static SentenceDocument? Rules(SheetCase sheet) => sheet.Sizing.Place switch
    {
        { Nights: false, Weekends: false } => sheet.Say($"Nothing runs at night or at weekends."),
        { Nights: false } => sheet.Say($"Nothing runs at night."),
        { Weekends: false } => sheet.Say($"Nothing runs at weekends."),
        _ => null,
    };

    private static IEnumerable<SentenceDocument> Late(SheetCase sheet)
    {
        foreach ((int o, int m) in sheet.OnMain())
        {
            OrderOnDocument on = sheet.Sizing.Orders[o].On[m];
            string at = $"/sizing/orders/{o}";
            Phrase order = Phrase.Of($"{Count($"{at}/copies")} × {Text($"{at}/project")} by {Text($"{at}/by")}");
            if (!on.CanMake) yield return sheet.Say($"{order}: {SheetCase.Name(sheet.Main)} cannot make it at all.");
            else if (!on.InTime && on.LeastMachines is not null)
                yield return sheet.Say($"{order}: one {SheetCase.Name(sheet.Main)} has {Count($"{at}/on/{m}/done")} by then; it takes {Count($"{at}/on/{m}/least_machines")} of them.");
            else if (!on.InTime)
                yield return sheet.Say($"{order}: one {SheetCase.Name(sheet.Main)} has {Count($"{at}/on/{m}/done")} by then, and more of them would not do it either.");
        }
    }
}
