using Platewright.Study.Documents;
using static Platewright.Study.Deciding.Sheet.Value;

namespace Platewright.Study.Deciding.Sheet;

/// <summary>How sure the answer is, and what no interval covers.</summary>
internal static class Doubting
{
    private const int ChangesSaid = 2;

    public static IEnumerable<SentenceDocument> Of(SheetCase sheet)
    {
        WorkloadDocument work = sheet.Sizing.Workload;
        yield return Sample(sheet, work);
        yield return Wanted(sheet, work);
        if (Tie(sheet) is { } tie) yield return tie;
        if (Money(sheet) is { } money) yield return money;
        yield return Times(sheet, work);
        foreach (SentenceDocument change in Sensitive(sheet)) yield return change;
    }

    private static SentenceDocument Sample(SheetCase sheet, WorkloadDocument work)
    {
        if (!work.Sample) return sheet.Say(
            $"The study counts {sheet.Work}, and that is all of the work: the doubt is in times, prices and what comes next.");
        Phrase from = work.Population is null ? Phrase.Of($"") : Phrase.Of($" out of {Count("/sizing/workload/population")}");
        return sheet.Say(
            $"It rests on a sample of {sheet.Work}{from}, at {Percent("/options/confidence")} confidence; whoever chose the sample, or answered, shaped it, and no interval covers that.");
    }

    private static SentenceDocument Wanted(SheetCase sheet, WorkloadDocument work)
    {
        if (work.Wanted == 0)
            return sheet.Say(
                $"Work never tried because the machine at hand was too small is in no folder, and is not counted here.");
        Phrase tried = work.Wanted == 1
            ? Phrase.Of($"{Count("/sizing/workload/wanted")} project is")
            : Phrase.Of($"{Count("/sizing/workload/wanted")} projects are");
        return sheet.Say(
            $"{tried} only wished for; without, {SheetCase.Name(sheet.Main)} makes {Percent($"{sheet.MainAt}/without_wanted/share")} instead of {sheet.Made}.");
    }

    private static SentenceDocument? Tie(SheetCase sheet)
    {
        string main = sheet.MainSizing.Machine;
        int i = SheetCase.Index(sheet.Sizing.Larger, l => !l.ToldApart && l.Larger == main);
        if (i < 0) i = SheetCase.Index(sheet.Sizing.Larger, l => !l.ToldApart && l.Smaller == main);
        if (i < 0) return null;
        LargerDocument l = sheet.Sizing.Larger[i];
        Phrase both = Phrase.Of($"{sheet.Named(l.Smaller)} and {sheet.Named(l.Larger)} cannot be told apart on this sample");
        return l.MoreProjects switch
        {
            null => sheet.Say($"{both}."),
            1 => sheet.Say($"{both}; about {Count($"/sizing/larger/{i}/more_projects")} more project would."),
            _ => sheet.Say($"{both}; about {Count($"/sizing/larger/{i}/more_projects")} more projects would."),
        };
    }

    private static SentenceDocument? Money(SheetCase sheet)
    {
        if (sheet.MainSizing is not { LowPerMonth: not null, HighPerMonth: not null, PerMonth: not null }) return null;
        return sheet.Say(
            $"With all assumptions drawn within their doubt, {SheetCase.Name(sheet.Main)} doing all it can costs {Value.Money($"{sheet.MainAt}/low_per_month")} to {Value.Money($"{sheet.MainAt}/high_per_month")} a month.");
    }

    private static SentenceDocument Times(SheetCase sheet, WorkloadDocument work)
    {
        EstimateSource source = Source(sheet.Study);
        Phrase rates = work.RatesAssumed
            ? Phrase.Of($"; nothing says how often a project is made, so each counts as made once a month")
            : Phrase.Of($"");
        return source switch
        {
            EstimateSource.None => sheet.Say($"No times were estimated{rates}."),
            EstimateSource.Prior => sheet.Say($"Times are simulated and no past job has corrected them yet{rates}."),
            _ => sheet.Say($"Times are simulated and corrected by past jobs where there were any{rates}."),
        };
    }

    private static IEnumerable<SentenceDocument> Sensitive(SheetCase sheet)
    {
        if (sheet.Sizing.Mix is null || sheet.Sizing.Sensitivity.Count == 0) yield break;
        int[] changing = [.. Enumerable.Range(0, sheet.Sizing.Sensitivity.Count).Where(i => sheet.Sizing.Sensitivity[i].Changes)];
        if (changing.Length == 0) yield return sheet.Say(
            $"No single assumption, changed within its doubt, changes the recommendation.");
        // The quick search behind the doubts may price the sets otherwise than the exact one; then it names no other answer.
        bool agrees = sheet.Sizing.Sensitivity.All(s => s.Changes || (s.LowAnswer == s.Answer && s.HighAnswer == s.Answer));
        foreach (int i in changing.Take(ChangesSaid))
        {
            SensitivityDocument s = sheet.Sizing.Sensitivity[i];
            string at = $"/sizing/sensitivity/{i}", end = s.LowAnswer != s.Answer ? "low" : "high";
            int known = SheetCase.Index(sheet.Sizing.Assumptions, a => a.Key == s.Assumption);
            Phrase what = Phrase.Of($"{Text($"{at}/what")}");
            if (agrees && known >= 0) what = Phrase.Of($"{what} at {Assuming.Amount(sheet, known, $"{at}/{end}")}");
            yield return agrees
                ? sheet.Say($"What would change it: {what}; then the answer is {Text($"{at}/{end}_answer")}.")
                : sheet.Say($"What would change it: {what}.");
        }
    }

    private enum EstimateSource
    {
        None,
        Prior,
        Log,
    }

    private static EstimateSource Source(StudyDocument study)
    {
        EstimateSource found = EstimateSource.None;
        foreach (PartEstimateDocument estimate in study.Parts.SelectMany(p => p.Fits).Select(f => f.Estimate).OfType<PartEstimateDocument>())
        {
            if (estimate.TimeError.Source == "log") return EstimateSource.Log;
            found = EstimateSource.Prior;
        }
        return found;
    }
}
