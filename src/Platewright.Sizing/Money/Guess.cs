namespace Platewright.Sizing.Money;

/// <summary>A number that nobody knows exactly.</summary>
/// <param name="Value">What is reckoned with.</param>
/// <param name="Low">It is hardly less, at most <paramref name="Value"/>.</param>
/// <param name="High">It is hardly more, at least <paramref name="Value"/>.</param>
/// <param name="Source">Who says so: "the study file", or where our assumption comes from.</param>
public sealed record Guess(double Value, double Low, double High, string Source)
{
    /// <summary>What the user states, without a range.</summary>
    public static Guess Stated(double value) => new(value, value, value, StudyFile);

    public const string StudyFile = "the study file";

    public bool IsStated => Source == StudyFile;
}
