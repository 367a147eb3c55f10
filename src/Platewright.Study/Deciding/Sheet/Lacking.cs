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
        foreach (SentenceDocument undone in NotMade(sheet)) yield return undone;
        if (Rules(sheet) is { } rules) yield return rules;
        if (sheet.Sizing.Place?.LongestRunH is not null)
            yield return sheet.Say(
                $"No build that takes more than {Hours("/sizing/place/longest_run_h")} with its warm-up can ever run here.");
        foreach (SentenceDocument late in Late(sheet).Take(OrdersSaid)) yield return late;
    }

    private static IEnumerable<SentenceDocument> NotMade(SheetCase sheet)
    {
        if (sheet.Sizing.Mix is not { } mix)
        {
            yield return sheet.CanMake(sheet.Main) >= 1
                ? sheet.Say($"Nothing in this study is beyond {SheetCase.Name(sheet.Main)}.")
                : sheet.Say($"{SheetCase.Name(sheet.Main)} makes {sheet.Made} of {sheet.Work}; the rest stays undone.");
            yield break;
        }
        // Where the aim is reached, work that would only add cost is left out though the machines could make it.
        bool reached = mix.Status is "optimal" or "within";
        ILookup<bool, int> left = Enumerable.Range(0, mix.NotMade.Count).ToLookup(n => reached && Makeable(sheet, mix, mix.NotMade[n]));
        if (mix.NotMade.Count == 0) yield return sheet.Say($"Nothing in this study stays undone.");
        if (left[false].Any()) yield return sheet.Say($"Not made: {Names(left[false])}.");
        if (left[true].Any())
            yield return sheet.Say($"Not counted on, since the aim is reached without: {Names(left[true])}.");
    }

    private static bool Makeable(SheetCase sheet, MixDocument mix, string project) =>
        sheet.Study.Projects.FirstOrDefault(p => p.Name == project) is { } found
        && mix.Machines.Any(m => m.Count > 0 && found.Verdicts[sheet.IndexOf(m.Machine)].CanMake);

    private static Phrase Names(IEnumerable<int> notMade)
    {
        int[] all = [.. notMade];
        Phrase[] names = [.. all.Select(n => Phrase.Of($"{Text($"/sizing/mix/not_made/{n}")}"))];
        return Phrase.List(all.Length > NamesShown + 1 ? [.. names.Take(NamesShown), Phrase.Of($"others")] : names);
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
                yield return sheet.Say(
                    $"{order}: one {SheetCase.Name(sheet.Main)} has {Count($"{at}/on/{m}/done")} by then; it takes {Count($"{at}/on/{m}/least_machines")} of them.");
            else if (!on.InTime)
                yield return sheet.Say(
                    $"{order}: one {SheetCase.Name(sheet.Main)} has {Count($"{at}/on/{m}/done")} by then, and more of them would not do it either.");
        }
    }
}
