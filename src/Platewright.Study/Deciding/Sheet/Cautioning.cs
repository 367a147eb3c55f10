using Platewright.Build.Care;
using Platewright.Study.Documents;
using static Platewright.Study.Deciding.Sheet.Value;

namespace Platewright.Study.Deciding.Sheet;

/// <summary>Where the work can hurt somebody: these words caution and never certify.</summary>
internal static class Cautioning
{
    public static IEnumerable<SentenceDocument> Of(SheetCase sheet)
    {
        yield return sheet.Say(
            $"Heated beds, nozzles and chambers burn skin and can start fires: follow the manual and local rules before one runs unattended.");
        yield return sheet.Say(
            $"Melted plastic gives off fumes, some kinds much more than others: ventilate or extract as data sheets and local rules ask.");
        if (sheet.Sizing.Mix is { PeakW: > 0 } one && one.Machines.Sum(m => m.Count) == 1)
            yield return sheet.Say(
                $"The machine draws up to {Watts("/sizing/mix/peak_w")} while it warms up: size mains circuits on that. {Decides}");
        else if (sheet.Sizing.Mix is { PeakW: > 0 })
            yield return sheet.Say(
                $"Machines that warm up together draw up to {Watts("/sizing/mix/peak_w")}: size mains circuits on that. {Decides}");
        else yield return sheet.Say(
            $"Machines that warm up together add up: size mains circuits on their peaks. {Decides}");
    }

    private static Phrase Decides => new(Cautions.WhoDecides, []);
}
