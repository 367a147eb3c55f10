using System.Collections.Immutable;
using System.Globalization;
using System.Text.RegularExpressions;
using Platewright.Study.Documents;

namespace Platewright.Study.Deciding.Sheet;

/// <summary>A piece of a sentence: its pattern, each {n} standing for the n-th value.</summary>
/// <param name="Pattern">Without any number of its own.</param>
/// <param name="Values">Where the numbers and names stand in study.json.</param>
internal sealed partial record Phrase(string Pattern, ImmutableArray<ValueDocument> Values)
{
    /// <param name="text">Its holes are values or phrases; anything else would be a number that nobody can rebuild.</param>
    /// <exception cref="ArgumentException">A hole is something else, or the text holds a digit.</exception>
    public static Phrase Of(FormattableString text)
    {
        var values = ImmutableArray.CreateBuilder<ValueDocument>();
        string pattern = Hole().Replace(text.Format, hole => Filled(text.GetArgument(Index(hole)), values));
        if (Hole().Replace(pattern, "").Any(char.IsDigit))
            throw new ArgumentException($"A sentence must take its numbers from the study: \"{pattern}\".", nameof(text));
        return new Phrase(pattern, values.ToImmutable());
    }

    /// <summary>As "a, b and c".</summary>
    public static Phrase List(IReadOnlyList<Phrase> phrases)
    {
        if (phrases.Count == 0) throw new ArgumentException("A list needs at least one phrase.", nameof(phrases));
        Phrase list = phrases[0];
        for (int i = 1; i < phrases.Count; i++)
            list = i == phrases.Count - 1 ? Of($"{list} and {phrases[i]}") : Of($"{list}, {phrases[i]}");
        return list;
    }

    /// <summary>The pattern with each hole replaced.</summary>
    public string Fill(Func<ValueDocument, string> said) => Hole().Replace(Pattern, hole => said(Values[Index(hole)]));

    private static string Filled(object? argument, ImmutableArray<ValueDocument>.Builder values)
    {
        switch (argument)
        {
            case ValueDocument value:
                values.Add(value);
                return Placeholder(values.Count - 1);
            case Phrase phrase:
                int first = values.Count;
                values.AddRange(phrase.Values);
                return Hole().Replace(phrase.Pattern, hole => Placeholder(first + Index(hole)));
            default:
                throw new ArgumentException($"A hole must be a value or a phrase, not \"{argument}\".", nameof(argument));
        }
    }

    private static string Placeholder(int index) => string.Create(CultureInfo.InvariantCulture, $"{{{index}}}");

    private static int Index(Match hole) => int.Parse(hole.Groups["index"].ValueSpan, CultureInfo.InvariantCulture);

    [GeneratedRegex(@"\{(?<index>\d+)\}", RegexOptions.ExplicitCapture, MatchWithinMs)]
    private static partial Regex Hole();

    private const int MatchWithinMs = 1000;
}
