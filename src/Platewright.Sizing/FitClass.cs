using Platewright.Fit;

namespace Platewright.Sizing;

/// <summary>What a verdict counts as.</summary>
public enum FitClass
{
    /// <summary>As drawn or turned.</summary>
    Fits,

    /// <summary>Only tilted, scaled or in pieces.</summary>
    Compromise,

    /// <summary>Does not fit.</summary>
    No,
}

/// <summary>Sorts verdicts into classes.</summary>
public static class FitClasses
{
    public static FitClass Class(this Verdict verdict) => verdict switch
    {
        Verdict.AsDrawn or Verdict.Turned => FitClass.Fits,
        Verdict.Tilted or Verdict.Scaled or Verdict.InPieces => FitClass.Compromise,
        Verdict.No => FitClass.No,
        _ => throw new ArgumentOutOfRangeException(nameof(verdict), verdict, "No such verdict."),
    };
}
