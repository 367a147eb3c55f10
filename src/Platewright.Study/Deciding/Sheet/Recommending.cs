using Platewright.Study.Documents;
using static Platewright.Study.Deciding.Sheet.Value;

namespace Platewright.Study.Deciding.Sheet;

/// <summary>What to do, what it costs, and whether anything cheaper does as much.</summary>
internal static class Recommending
{
    private const string Mix = "/sizing/mix";

    // Below, the share would be said as none at all.
    private const double LeastNoticed = 0.0005;

    public static IEnumerable<SentenceDocument> Of(SheetCase sheet) =>
        sheet.Sizing.Mix is { } mix ? Bought(sheet, mix) : Smallest(sheet);

    private static IEnumerable<SentenceDocument> Bought(SheetCase sheet, MixDocument mix)
    {
        if (mix.Status == "no_room")
        {
            yield return mix.Blocking.Count > 0
                ? sheet.Say(
                    $"The machines that are there already break {Limits(sheet, mix)}: lift it, or part with one of them, before anything is bought.")
                : sheet.Say(
                    $"The machines that are there already break a limit: lift it, or part with one of them, before anything is bought.");
            yield break;
        }
        if (mix.Status == "unreachable") yield return Unreachable(sheet, mix);
        if (mix.Status == "undecided")
            yield return sheet.Say(
                $"Whether {Percent($"{Mix}/aimed")} of the work can be covered was not settled; this is the best that was found.");
        if (mix.Machines.All(m => m.Count == 0))
        {
            yield return sheet.Say($"Buy nothing yet: none of these machines makes any of the work within the limits.");
            yield break;
        }
        yield return Buy(sheet, mix);
        yield return sheet.Say(
            $"That covers {Percent($"{Mix}/covered")} of the work, counted as often as it is made, for {Money($"{Mix}/per_month")} a month: {Money($"{Mix}/owning_per_month")} for owning, {Money($"{Mix}/running_per_month")} for running.");
        if (mix.Status == "optimal")
            yield return sheet.Say(
                $"No cheaper set of the machines in this study covers the aimed {Percent($"{Mix}/aimed")}: that is proved.");
        if (mix.Status == "within" && mix.Within >= LeastNoticed)
            yield return sheet.Say(
                $"A cheaper set might exist; it would save at most {Percent($"{Mix}/within")} of the monthly cost.");
        if (mix.Status == "within" && mix.Within < LeastNoticed)
            yield return sheet.Say($"A cheaper set might exist; what it would save is too little to notice.");
    }

    private static SentenceDocument Buy(SheetCase sheet, MixDocument mix)
    {
        bool buys = mix.Machines.Any(m => m.Count > m.Owned), keeps = mix.Machines.Any(m => m.Owned > 0 && m.Owned == m.Count);
        Phrase kept = keeps ? SheetCase.Machines($"{Mix}/machines", mix.Machines, m => m.Owned == m.Count) : Phrase.Of($"");
        if (!buys) return sheet.Say($"Buy nothing: keep {kept}.");
        Phrase bought = SheetCase.Machines($"{Mix}/machines", mix.Machines, m => m.Count > m.Owned);
        return keeps
            ? sheet.Say($"Buy {bought} for {Money($"{Mix}/price")}, tax included, and keep {kept}.")
            : sheet.Say($"Buy {bought} for {Money($"{Mix}/price")}, tax included.");
    }

    private static SentenceDocument Unreachable(SheetCase sheet, MixDocument mix) => mix.Blocking.Count switch
    {
        0 => sheet.Say(
            $"The aim of {Percent($"{Mix}/aimed")} of the work cannot be reached; no set of these machines covers more than {Percent($"{Mix}/reachable")}."),
        1 => sheet.Say(
            $"The aim of {Percent($"{Mix}/aimed")} of the work cannot be reached because of {Limits(sheet, mix)}; this is the best within it."),
        _ => sheet.Say(
            $"The aim of {Percent($"{Mix}/aimed")} of the work cannot be reached; lifting any one of these would do: {Limits(sheet, mix)}."),
    };

    private static Phrase Limits(SheetCase sheet, MixDocument mix) => Phrase.List([.. mix.Blocking.Select(b => Limit(sheet.Sizing.Aim, b))]);

    private static Phrase Limit(AimDocument aim, string limit) => limit switch
    {
        "budget" when aim.Budget is not null => Phrase.Of($"the budget of {Money("/sizing/aim/budget")}"),
        "floor" when aim.FloorM2 is not null => Phrase.Of($"the floor of {M2("/sizing/aim/floor_m2")}"),
        "power" when aim.CircuitW is not null => Phrase.Of($"the mains circuit of {Watts("/sizing/aim/circuit_w")}"),
        "machines" when aim.MostMachines == 1 => Phrase.Of($"the limit of {Count("/sizing/aim/most_machines")} machine"),
        "machines" when aim.MostMachines is not null => Phrase.Of($"the limit of {Count("/sizing/aim/most_machines")} machines"),
        "counts" => Phrase.Of($"the greatest number of each machine"),
        _ => Phrase.Of($"a limit of the place"),
    };

    private static IEnumerable<SentenceDocument> Smallest(SheetCase sheet)
    {
        ValueDocument aim = Percent("/sizing/aim/cover_share");
        if (sheet.CanMake(sheet.Main) <= 0) yield return sheet.Say(
            $"No machine of this study makes any of {sheet.Work}.");
        else yield return sheet.Aimed >= 0
            ? sheet.Say(
                $"{SheetCase.Name(sheet.Main)} is the smallest machine of this study that makes {Percent($"/sizing/levels/{sheet.Aimed}/share")} of the projects.")
            : sheet.Say(
                $"No machine of this study makes {aim} of the projects; {SheetCase.Name(sheet.Main)} makes the most, {sheet.Made}.");
        bool priced = sheet.Study.Machines.Any(m => m.Price is not null);
        yield return priced
            ? sheet.Say($"Money is not in this answer: times, or some prices, are not known.")
            : sheet.Say(
                $"Money is not in this answer: no machine here states a price; with prices the sheet names the cheapest set.");
    }
}
