using Platewright.Sizing.Answers;
using Platewright.Sizing.Covering;
using Platewright.Sizing.Statistics;
using Platewright.Study.Describing;
using Platewright.Study.Documents;

namespace Platewright.Study.Deciding;

/// <summary>Hours and money on the size line, and everything on the price line, as the documents show it.</summary>
internal static class CurvesDescription
{
    public static IReadOnlyList<MeasuredCurveDocument> BySize(SizingAnswer answer) =>
    [
        .. answer.Curves.Select(c => new MeasuredCurveDocument(
            Word(c.Measure), Kind(c.Level is not null), MachineDescription.Of(c.Level?.Heat), c.Level?.Like ?? [], c.Total, c.LeftOut,
            [.. c.Steps.Select(s => new MeasuredStepDocument(s.EdgeMm, Of(s.Fits), Of(s.WithCompromise)))])),
    ];

    public static IReadOnlyList<PriceCurveDocument> ByPrice(SizingAnswer answer) =>
    [
        .. answer.PriceCurves.Select(c => new PriceCurveDocument(
            Word(c.Measure), Kind(c.CanMake), c.Total, c.LeftOut,
            [
                .. c.Steps.Select(s => new PriceStepDocument(
                    s.Price, answer.Case.Machines[s.FitsMachine].Id, Of(s.Fits), answer.Case.Machines[s.Machine].Id, Of(s.WithCompromise))),
            ])),
    ];

    public static IReadOnlyList<ProjectWeightDocument> Weights(SizingAnswer answer) =>
    [
        .. answer.Case.Projects.Select((p, i) => new ProjectWeightDocument(
            p.Id, Weighing.Weight(p, Measure.Hours, null), answer.WorkCosts[i])),
    ];

    public static string Word(Measure measure) => measure switch
    {
        Measure.Parts => "parts",
        Measure.Projects => "projects",
        Measure.ProjectsAsMade => "projects_as_made",
        Measure.Hours => "hours",
        Measure.Mass => "mass",
        Measure.Money => "money",
        _ => throw new ArgumentOutOfRangeException(nameof(measure), measure, "No such measure."),
    };

    private static string Kind(bool canMake) => canMake ? "can_make" : "fits";

    private static AmountDocument Of(WeightedShare s) => new(s.Covered, s.Value ?? 0, s.Low, s.High);
}
