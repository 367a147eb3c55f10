using Platewright.Study.Documents;
using static Platewright.Study.Deciding.Sheet.Value;

namespace Platewright.Study.Deciding.Sheet;

/// <summary>What else would do, and what that changes.</summary>
internal static class Choosing
{
    private const double Slack = 1e-9;

    public static IEnumerable<SentenceDocument> Of(SheetCase sheet)
    {
        if (sheet.Sizing.Mix is { } mix)
        {
            if (Cheaper(sheet, mix) is { } cheaper) yield return cheaper;
            if (SameMachines(sheet, mix) is { } all) yield return all;
            if (More(sheet, mix) is { } more) yield return more;
        }
        else if (NextLevel(sheet) is { } next) yield return next;
        if (SameMoney(sheet) is { } same) yield return same;
    }

    private static SentenceDocument? Cheaper(SheetCase sheet, MixDocument mix)
    {
        int i = Points(sheet, mix, p => p.Covered < mix.Covered - Slack && p.PerMonth < mix.PerMonth)
            .OrderByDescending(f => sheet.Sizing.Front[f].Covered).ThenBy(f => sheet.Sizing.Front[f].PerMonth).FirstOrDefault(-1);
        return i < 0 ? null : sheet.Say($"For less: {Point(sheet, i)}, {Instead}.");
    }

    private static SentenceDocument? More(SheetCase sheet, MixDocument mix)
    {
        int i = Points(sheet, mix, p => p.Covered > mix.Covered + Slack)
            .OrderBy(f => sheet.Sizing.Front[f].PerMonth).ThenByDescending(f => sheet.Sizing.Front[f].Covered).FirstOrDefault(-1);
        return i < 0 ? null : sheet.Say($"To make more: {Point(sheet, i)}, {Instead}.");
    }

    // The aim may be reached without all that the machines could make.
    private static SentenceDocument? SameMachines(SheetCase sheet, MixDocument mix)
    {
        int i = Enumerable.Range(0, sheet.Sizing.Front.Count)
            .Where(f => sheet.Sizing.Front[f].Covered > mix.Covered + Slack && SheetCase.Same(sheet.Sizing.Front[f].Counts, mix.Machines))
            .OrderByDescending(f => sheet.Sizing.Front[f].Covered).ThenBy(f => sheet.Sizing.Front[f].PerMonth).FirstOrDefault(-1);
        string at = $"/sizing/front/{i}";
        return i < 0
            ? null
            : sheet.Say(
                $"With nothing more to buy: {Percent($"{at}/covered")} of the work for {Money($"{at}/per_month")} a month, {Instead}.");
    }

    private static Phrase Instead =>
        Phrase.Of($"instead of {Percent("/sizing/mix/covered")} for {Money("/sizing/mix/per_month")}");

    private static IEnumerable<int> Points(SheetCase sheet, MixDocument mix, Func<FrontPointDocument, bool> which) =>
        Enumerable.Range(0, sheet.Sizing.Front.Count).Where(f => sheet.Sizing.Front[f] is var p
            && p.Counts.Any(c => c.Count > 0) && !SheetCase.Same(p.Counts, mix.Machines) && which(p));

    private static Phrase Point(SheetCase sheet, int i)
    {
        string at = $"/sizing/front/{i}";
        Phrase machines = SheetCase.Machines($"{at}/counts", sheet.Sizing.Front[i].Counts);
        return Phrase.Of($"{machines} makes {Percent($"{at}/covered")} of the work for {Money($"{at}/per_month")} a month");
    }

    private static SentenceDocument? NextLevel(SheetCase sheet)
    {
        int i = SheetCase.Index(sheet.Sizing.Levels, l => l.Listed is { } id && id != sheet.MainSizing.Machine);
        return i < 0
            ? null
            : sheet.Say(
                $"{sheet.Named(sheet.Sizing.Levels[i].Listed!)} is the smallest here that makes {Percent($"/sizing/levels/{i}/share")} of the projects.");
    }

    private static SentenceDocument? SameMoney(SheetCase sheet)
    {
        int i = SheetCase.Index(sheet.Sizing.SameMoney, s => s.One.Count > 0 && s.Many.Count > 1);
        if (i < 0) return null;
        SameMoneyDocument s = sheet.Sizing.SameMoney[i];
        Phrase one = Side(sheet, $"/sizing/same_money/{i}/one", s.One), many = Side(sheet, $"/sizing/same_money/{i}/many", s.Many);
        string down = $"/sizing/same_money/{i}/many/one_down_parts_per_week";
        return s.Many.OneDownPartsPerWeek > 0
            ? sheet.Say($"For the same money: {one}; {many}, and {Number(down)} parts a week with one of them down.")
            : sheet.Say($"For the same money: {one}; {many}.");
    }

    private static Phrase Side(SheetCase sheet, string at, MoneySideDocument side) => Phrase.Of(
        $"{Count($"{at}/count")} × {sheet.Named(side.Machine)} can make {Count($"{at}/can_make")} of {SheetCase.Projects($"{at}/projects", side.Projects)}");
}
