using System.Text.RegularExpressions;

namespace Platewright.Study.Hiding;

/// <summary>Sentences that readers of files wrote, without what they quote of them.</summary>
internal static partial class NeutralText
{
    /// <summary>A shorter name is a word like any other; where a sentence says it, it says it in quotation marks.</summary>
    private const int ShortestName = 3;

    /// <summary>The sentence with known names replaced, the longest first, and everything in quotation marks left out.</summary>
    /// <param name="text">The sentence.</param>
    /// <param name="names">Each name with what stands for it.</param>
    public static string Of(string text, IEnumerable<(string Name, string Neutral)> names)
    {
        foreach ((string name, string neutral) in names.Where(n => n.Name.Length >= ShortestName).OrderByDescending(n => n.Name.Length))
            text = Regex.Replace(text, $@"(?<!\w){Regex.Escape(name)}(?!\w)", _ => neutral, RegexOptions.IgnoreCase, Patience);
        return Quoted().Replace(text, "\"…\"");
    }

    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(10);

    [GeneratedRegex("\"[^\"]*\"|\u201C[^\u201D]*\u201D", RegexOptions.None, matchTimeoutMilliseconds: 10_000)]
    private static partial Regex Quoted();
}
