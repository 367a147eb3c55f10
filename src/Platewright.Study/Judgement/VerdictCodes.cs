using Platewright.Fit;
using Platewright.Sizing;

namespace Platewright.Study.Judgement;

/// <summary>Verdicts in the words of the documents.</summary>
public static class VerdictCodes
{
    /// <summary>as_drawn, turned, tilted, scaled, in_pieces or no.</summary>
    public static string Code(this Verdict verdict) => verdict switch
    {
        Verdict.AsDrawn => "as_drawn",
        Verdict.Turned => "turned",
        Verdict.Tilted => "tilted",
        Verdict.Scaled => "scaled",
        Verdict.InPieces => "in_pieces",
        Verdict.No => "no",
        _ => throw new ArgumentOutOfRangeException(nameof(verdict), verdict, "No such verdict."),
    };

    /// <summary>fits, compromise or no.</summary>
    public static string CountsAs(this Verdict verdict) => verdict.Class() switch
    {
        FitClass.Fits => "fits",
        FitClass.Compromise => "compromise",
        _ => "no",
    };
}
