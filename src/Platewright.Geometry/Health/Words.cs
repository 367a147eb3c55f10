namespace Platewright.Geometry;

/// <summary>Small parts of sentences.</summary>
internal static class Words
{
    public static string Plural(int count, string one, string many) => count == 1 ? one : many;

    /// <summary>A length as people say it: three significant digits at most.</summary>
    public static string Length(double mm) => FormattableString.Invariant($"{double.Parse(mm.ToString("G3"))} mm");
}
