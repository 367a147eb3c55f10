using System.Text.Json;
using Platewright.Study.Documents;

namespace Platewright.Study.Deciding.Sheet;

/// <summary>
/// Fills sentences from the numbers as study.json will have them, so that whoever reads the file can rebuild each one.
/// Parts, projects and curves are left out, for speed: no sentence may point at them.
/// </summary>
internal sealed class SheetWriter
{
    private readonly JsonElement _study;
    private readonly string _currency;

    public SheetWriter(StudyDocument study, SizingDocument sizing)
    {
        StudyDocument slim = study with
        {
            Parts = [],
            Projects = [],
            Curves = [],
            Alike = [],
            Machines = [.. study.Machines.Select(m => m with { Cycles = [] })],
            Sizing = sizing with { BreakEvens = [.. sizing.BreakEvens.Select(b => b with { Points = [] })] },
        };
        _study = JsonSerializer.SerializeToElement(slim, DocumentJson.Compact);
        _currency = sizing.Currency;
    }

    /// <exception cref="ArgumentException">The pattern holds a digit of its own.</exception>
    /// <exception cref="InvalidOperationException">A pointer leads nowhere.</exception>
    public SentenceDocument Say(FormattableString text) => Say(Phrase.Of(text));

    /// <exception cref="InvalidOperationException">A pointer leads nowhere.</exception>
    public SentenceDocument Say(Phrase phrase) =>
        new(phrase.Fill(v => ValueText.Of(At(v.At), v.As, _currency)), phrase.Pattern, phrase.Values);

    // RFC 6901; none of our keys holds "~" or "/", so that nothing is escaped.
    private JsonElement At(string pointer)
    {
        JsonElement here = _study;
        foreach (string step in pointer.Split('/').Skip(1))
        {
            bool found = here.ValueKind == JsonValueKind.Array
                ? int.TryParse(step, out int index) && index >= 0 && index < here.GetArrayLength()
                : here.ValueKind == JsonValueKind.Object && here.TryGetProperty(step, out _);
            if (!found) throw Nowhere(pointer);
            here = here.ValueKind == JsonValueKind.Array ? here[int.Parse(step)] : here.GetProperty(step);
        }
        return here.ValueKind == JsonValueKind.Null ? throw Nowhere(pointer) : here;
    }

    private static InvalidOperationException Nowhere(string pointer) => new($"Bug in the decision sheet: nothing at {pointer} of study.json.");
}
