using System.Globalization;
using System.Text;

namespace Platewright.Study.Examining;

/// <summary>What a file says of its maker and licence, as it may be shown: anybody may have written it, and anything.</summary>
internal static class OriginText
{
    /// <summary>Longest text that is shown, in UTF-16 units: a name or a licence, not its wording. Our choice.</summary>
    public const int MostCharacters = 160;

    private const string Ellipsis = "…", Between = "; ";

    /// <summary>
    /// The texts that say something, one after the other: in one line, without control characters and marks that change the
    /// direction of writing, cut where it becomes long. Null where none says anything.
    /// </summary>
    public static string? Of(params IEnumerable<string?> texts)
    {
        string shown = string.Join(Between, texts.Select(Plain).Where(t => t.Length > 0).Distinct(StringComparer.Ordinal));
        if (shown.Length == 0) return null;
        if (shown.Length <= MostCharacters) return shown;
        int end = MostCharacters - Ellipsis.Length;
        if (char.IsHighSurrogate(shown[end - 1])) end--;
        return shown[..end].TrimEnd() + Ellipsis;
    }

    private static string Plain(string? text)
    {
        if (text is null) return "";
        var plain = new StringBuilder();
        foreach (Rune rune in text.EnumerateRunes())
        {
            if (Rune.IsWhiteSpace(rune) || Rune.IsControl(rune)) Space(plain);
            else if (IsSeen(rune)) plain.Append(rune);
            if (plain.Length > 2 * MostCharacters) break;
        }
        return plain.ToString().Trim();
    }

    private static void Space(StringBuilder plain)
    {
        if (plain.Length > 0 && plain[^1] != ' ') plain.Append(' ');
    }

    // Format characters turn the direction of what follows, private ones have no agreed look, a broken surrogate becomes U+FFFD.
    private static bool IsSeen(Rune rune) => rune != Rune.ReplacementChar && Rune.GetUnicodeCategory(rune) is not
        (UnicodeCategory.Format or UnicodeCategory.PrivateUse or UnicodeCategory.OtherNotAssigned or UnicodeCategory.Surrogate);
}
