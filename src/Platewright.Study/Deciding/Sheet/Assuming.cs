using Platewright.Study.Documents;
using static Platewright.Study.Deciding.Sheet.Value;

namespace Platewright.Study.Deciding.Sheet;

/// <summary>The assumptions that matter most, with their doubt and source.</summary>
internal static class Assuming
{
    private static readonly string[] MatterMost =
        ["cost.energy_per_kwh", "cost.failure_share", "cost.life_years", "cost.labour_per_h", "cost.tax_share"];

    public static IEnumerable<SentenceDocument> Of(SheetCase sheet)
    {
        if (sheet.Sizing.Mix is null) yield break;
        foreach (string key in MatterMost)
        {
            int i = SheetCase.Index(sheet.Sizing.Assumptions, a => a.Key == key);
            if (i < 0) continue;
            AssumptionDocument a = sheet.Sizing.Assumptions[i];
            string at = $"/sizing/assumptions/{i}";
            Phrase value = Phrase.Of($"{Text($"{at}/what")}: {Amount(sheet, i, $"{at}/value")}");
            yield return a.Low < a.High
                ? sheet.Say($"{value} ({Bare(a, $"{at}/low")} to {Bare(a, $"{at}/high")}); {Text($"{at}/source")}.")
                : sheet.Say($"{value}; {Text($"{at}/source")}.");
        }
    }

    private static ValueDocument Bare(AssumptionDocument a, string at) => a.Unit.Length == 0 ? Percent(at) : Number(at);

    /// <summary>A value of an assumption in its unit: a share as a percentage.</summary>
    public static Phrase Amount(SheetCase sheet, int assumption, string at) => sheet.Sizing.Assumptions[assumption].Unit.Length == 0
        ? Phrase.Of($"{Percent(at)}")
        : Phrase.Of($"{Number(at)} {Text($"/sizing/assumptions/{assumption}/unit")}");
}
