using Platewright.Fit;
using Platewright.Machines;

namespace Platewright.Study.Judgement;

/// <summary>A fit with everything else that decides whether the part can be made.</summary>
/// <param name="CanMake">It fits somehow and nothing stands in the way.</param>
/// <param name="Reasons">The fit's sentence, then each obstacle.</param>
public sealed record JudgedFit(FitResult Fit, bool CanMake, IReadOnlyList<string> Reasons)
{
    /// <inheritdoc cref="Obstacles.Of"/>
    /// <param name="placeForbids">What the place does not allow, a sentence each.</param>
    public static JudgedFit Of(
        FitResult fit, Machine machine, Material? material, double? thinnestWallMm, double beadWidthMm,
        IReadOnlyList<string>? placeForbids = null)
    {
        IReadOnlyList<string> obstacles =
            [.. Obstacles.Of(fit, machine, material, thinnestWallMm, beadWidthMm), .. placeForbids ?? []];
        return new JudgedFit(fit, fit.Verdict != Verdict.No && obstacles.Count == 0, [Sentence(fit.Reason), .. obstacles]);
    }

    private static string Sentence(string text) => text.Length == 0 ? text : $"{char.ToUpperInvariant(text[0])}{text[1..].TrimEnd('.')}.";
}
