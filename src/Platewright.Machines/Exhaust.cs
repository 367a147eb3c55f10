namespace Platewright.Machines;

/// <summary>What happens to the air of a machine, from nothing to the most.</summary>
public enum Exhaust
{
    /// <summary>It goes into the room.</summary>
    None,

    /// <summary>It passes a filter of the machine first.</summary>
    Filter,

    /// <summary>It is led out of the building.</summary>
    Duct,
}

/// <summary>The words of files and documents for it.</summary>
public static class Exhausts
{
    /// <summary>In the order of the enumeration.</summary>
    public static IReadOnlyList<string> Words { get; } = ["none", "filter", "duct"];

    public static string Word(this Exhaust exhaust) => Words[(int)exhaust];

    /// <summary>Null for a word that is none of <see cref="Words"/>.</summary>
    public static Exhaust? Named(string? word) =>
        word is not null && Words.ToList().IndexOf(word) is >= 0 and var found ? (Exhaust)found : null;
}
