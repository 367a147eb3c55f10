using Platewright.Fit;

namespace Platewright.Study.Judgement;

/// <summary>A part of a project as its verdict needs it.</summary>
/// <param name="Id">Unique in the study.</param>
/// <param name="Name">What the user calls it.</param>
/// <param name="AnyOf">Its group of alternatives, null where it must be there.</param>
/// <param name="NeedMm">Edge of the smallest cube that holds it: of equally bad parts the one that needs most decides.</param>
public sealed record JudgedPart(string Id, string Name, string? AnyOf, double NeedMm, JudgedFit Judged);

/// <summary>
/// A project on one machine: as good as its worst part, where the best of alternatives counts. Fit and "can make" are judged
/// apart: of two alternatives one may fit best and the other be the one that can be made.
/// </summary>
/// <param name="DecidedBy">The part that decides; null where every part fits as drawn with room to spare.</param>
public sealed record ProjectVerdict(Verdict Verdict, bool CanMake, bool Tight, string? DecidedBy, string Reason)
{
    /// <param name="parts">At least one, in the order of the study.</param>
    /// <exception cref="ArgumentException">There is no part.</exception>
    public static ProjectVerdict Of(IReadOnlyList<JudgedPart> parts)
    {
        if (parts.Count == 0) throw new ArgumentException("A project needs at least one part.", nameof(parts));
        JudgedPart[][] needed = AnyOf.Groups(parts, p => p.AnyOf, p => p.Id);
        JudgedPart worst = needed.Select(BestOf)
            .OrderByDescending(p => p.Judged.Fit.Verdict).ThenBy(p => p.Judged.CanMake).ThenBy(Clearance).ThenByDescending(p => p.NeedMm)
            .First();
        JudgedPart? kept = needed.Where(a => !a.Any(p => p.Judged.CanMake)).Select(BestOf)
            .OrderByDescending(p => p.Judged.Fit.Verdict).FirstOrDefault();
        JudgedFit judged = worst.Judged;
        bool tight = judged.Fit.Verdict != Verdict.No && needed.Any(a => BestOf(a).Judged.Fit.Tight);
        bool decides = judged.Fit.Verdict != Verdict.AsDrawn || judged.Fit.Tight;
        string reason = Said(worst, parts.Count);
        if (kept is not null && kept.Id != worst.Id) reason += $" {Said(kept, parts.Count)}";
        string? decidedBy = decides ? worst.Id : kept?.Id;
        return new ProjectVerdict(judged.Fit.Verdict, kept is null, tight, decidedBy, reason);
    }

    private static JudgedPart BestOf(JudgedPart[] alternatives) =>
        alternatives.OrderBy(p => p.Judged.Fit.Verdict).ThenByDescending(p => p.Judged.CanMake)
            .ThenByDescending(Clearance).ThenBy(p => p.NeedMm).First();

    private static double Clearance(JudgedPart p) => p.Judged.Fit.ClearanceMm;

    private static string Said(JudgedPart part, int parts)
    {
        string reasons = string.Join(' ', part.Judged.Reasons);
        return parts > 1 ? $"{part.Name}: {reasons}" : reasons;
    }
}
