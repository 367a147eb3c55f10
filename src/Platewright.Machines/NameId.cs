using System.Text;

namespace Platewright.Machines;

/// <summary>Makes the id of a machine or recipe from its name.</summary>
public static class NameId
{
    /// <summary>Letters and digits in small letters, everything else a single hyphen between them.</summary>
    /// <exception cref="ArgumentException">The name has no letter and no digit.</exception>
    public static string Of(string name)
    {
        StringBuilder id = new();
        foreach (Rune rune in name.EnumerateRunes())
        {
            if (Rune.IsLetterOrDigit(rune)) id.Append(Rune.ToLowerInvariant(rune));
            else if (id.Length > 0 && id[^1] != '-') id.Append('-');
        }
        return id.Length > 0
            ? id.ToString().TrimEnd('-')
            : throw new ArgumentException($"A name needs a letter or a digit, but it is \"{name}\".", nameof(name));
    }

    /// <summary>Whether an id can be made of it.</summary>
    public static bool IsPossible(string name) => name.EnumerateRunes().Any(Rune.IsLetterOrDigit);
}
