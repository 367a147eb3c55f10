using Platewright.Study.Documents;
using static Platewright.Study.Deciding.Sheet.Value;

namespace Platewright.Study.Deciding.Sheet;

/// <summary>The three reasons that the numbers support best, the strongest first.</summary>
internal static class Reasoning
{
    private const int Reasons = 3;
    private const int NamesShown = 2;
    private const double Slack = 1e-9;

    /// <returns>Always three: the last ones hold for any study.</returns>
    public static IEnumerable<SentenceDocument> Of(SheetCase sheet) => new[]
    {
        Coverage(sheet), OneSizeDown(sheet), NextSet(sheet), InTime(sheet), Busy(sheet), OneSizeUp(sheet), FirstYear(sheet),
        Changes(sheet), WithoutCompromise(sheet), Judged(sheet),
    }.OfType<SentenceDocument>().Take(Reasons);

    private static SentenceDocument Coverage(SheetCase sheet)
    {
        Phrase made = Phrase.Of($"{SheetCase.Name(sheet.Main)} alone makes {sheet.Made} of {sheet.Work}");
        return sheet.Sizing.Workload.Sample && sheet.MeasureAt is { } at
            ? sheet.Say($"{made}; of more work like it, {Percent($"{at}/low")} to {Percent($"{at}/high")}.")
            : sheet.Say($"{made}.");
    }

    private static SentenceDocument? OneSizeDown(SheetCase sheet)
    {
        int i = SheetCase.Index(sheet.Sizing.Larger, l => l.Larger == sheet.MainSizing.Machine);
        if (i < 0) return null;
        LargerDocument l = sheet.Sizing.Larger[i];
        string at = $"/sizing/larger/{i}";
        ValueDocument smaller = sheet.Named(l.Smaller), larger = sheet.Named(l.Larger);
        if (!l.ToldApart) return null;
        Phrase gained = SheetCase.Projects($"{at}/gained", l.Gained), lost = SheetCase.Projects($"{at}/lost", l.Lost);
        if (l.Share < 0)
            return sheet.Say($"One size down, {smaller} makes {lost} that {larger} cannot, and lacks {gained}.");
        Phrase without = Phrase.Of($"One size down, {smaller} cannot make {gained}{Among(at, l)}");
        return l.Lost == 0 ? sheet.Say($"{without}.") : sheet.Say($"{without}, but {lost} that {larger} cannot.");
    }

    private static Phrase Among(string at, LargerDocument l)
    {
        if (l.GainedNames.Count == 0) return Phrase.Of($"");
        Phrase names = Phrase.List([.. Enumerable.Range(0, Math.Min(NamesShown, l.GainedNames.Count)).Select(n => Phrase.Of($"{Text($"{at}/gained_names/{n}")}"))]);
        return l.Gained > NamesShown ? Phrase.Of($" (as {names})") : Phrase.Of($" ({names})");
    }

    private static SentenceDocument? OneSizeUp(SheetCase sheet)
    {
        int i = SheetCase.Index(sheet.Sizing.Larger, l => l.Smaller == sheet.MainSizing.Machine);
        if (i < 0 || sheet.Sizing.Larger[i] is not { Lost: 0, ToldApart: true } l) return null;
        string at = $"/sizing/larger/{i}";
        ValueDocument larger = sheet.Named(l.Larger);
        if (l.Gained == 0) return sheet.Say($"One size up, {larger} makes none of these projects that it cannot.");
        Phrase gained = SheetCase.Projects($"{at}/gained", l.Gained);
        return l.Price is > 0
            ? sheet.Say($"One size up, {larger} adds {gained} and costs {Money($"{at}/price")} more.")
            : sheet.Say($"One size up, {larger} adds {gained}.");
    }

    // The cheapest set of the front that does at least as much, as long as it is dearer.
    private static SentenceDocument? NextSet(SheetCase sheet)
    {
        if (sheet.Sizing.Mix is not { } mix) return null;
        int i = Enumerable.Range(0, sheet.Sizing.Front.Count)
            .Where(f => sheet.Sizing.Front[f] is var p && p.Covered >= mix.Covered - Slack && p.PerMonth > mix.PerMonth
                && p.Counts.Any(c => c.Count > 0) && !SheetCase.Same(p.Counts, mix.Machines))
            .OrderBy(f => sheet.Sizing.Front[f].PerMonth).FirstOrDefault(-1);
        if (i < 0) return null;
        string at = $"/sizing/front/{i}";
        Phrase other = SheetCase.Machines($"{at}/counts", sheet.Sizing.Front[i].Counts);
        return sheet.Say(
            $"The next cheapest set that does at least as much, {other}, costs {Money($"{at}/per_month")} a month instead of {Money("/sizing/mix/per_month")}.");
    }

    private static SentenceDocument? InTime(SheetCase sheet)
    {
        if (sheet.Sizing.Mix is null) return null;
        foreach ((int o, int m) in sheet.OnMain())
        {
            if (!sheet.Sizing.Orders[o].On[m].InTime) continue;
            string at = $"/sizing/orders/{o}";
            return sheet.Say(
                $"One {SheetCase.Name(sheet.Main)} has {Count($"{at}/copies")} × {Text($"{at}/project")} in hand by {Text($"{at}/by")}.");
        }
        return null;
    }

    private static SentenceDocument? Busy(SheetCase sheet)
    {
        if (sheet.Sizing.Mix is not { } mix) return null;
        int i = SheetCase.Index(mix.Machines, m => m.Machine == sheet.MainSizing.Machine);
        if (i < 0 || mix.Machines[i].HoursUsed <= 0) return null;
        string at = $"/sizing/mix/machines/{i}";
        return mix.Machines[i].Count == 1
            ? sheet.Say(
                $"{Text($"{at}/name")} is busy {Hours($"{at}/hours_used")} of the {Hours($"{at}/hours_of_one")} a month that it can give here.")
            : sheet.Say(
                $"{Text($"{at}/name")}: {Hours($"{at}/hours_used")} of work a month, and each of {Count($"{at}/count")} can give {Hours($"{at}/hours_of_one")}.");
    }

    private static SentenceDocument? FirstYear(SheetCase sheet) => sheet.Sizing.Mix is { Machines: [_, ..] }
        ? sheet.Say($"The first year costs {Money("/sizing/mix/first_year")} with everything, buying included.")
        : null;

    private static SentenceDocument? Changes(SheetCase sheet)
    {
        if (sheet.MainSizing.TurnRound is not { IterationsPerDay: > 0 } t) return null;
        string at = $"{sheet.MainAt}/turn_round";
        Phrase times = t.IterationsPerDay == 1
            ? Phrase.Of($"{Count($"{at}/iterations_per_day")} change")
            : Phrase.Of($"{Count($"{at}/iterations_per_day")} changes");
        return sheet.Say(
            $"A changed model ({Text($"{at}/part")}) is in hand after {Time($"{at}/mean_s")}: {times} in a working day.");
    }

    private static SentenceDocument WithoutCompromise(SheetCase sheet)
    {
        string at = $"/machines/{sheet.Main}/coverage";
        CoverageDocument c = sheet.Study.Machines[sheet.Main].Coverage;
        return sheet.Say(
            $"By size alone it holds {SheetCase.Projects($"{at}/fits/count", c.Fits.Count)} as they are, and {Count($"{at}/compromise/count")} more tilted, scaled or in pieces.");
    }

    private static SentenceDocument Judged(SheetCase sheet) => sheet.Study.Machines.Count == 1
        ? sheet.Say($"Every part of {sheet.Work} was tried on the one machine of the study.")
        : sheet.Say($"Every part of {sheet.Work} was tried on every machine of the study.");
}
