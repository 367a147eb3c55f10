using System.ComponentModel.DataAnnotations;

namespace Platewright.Study.Documents;

/// <summary>A share of machine hours or of money against the edge of a cube-shaped machine.</summary>
/// <param name="Measure">hours or money.</param>
/// <param name="Kind">fits or can_make.</param>
/// <param name="Heat">For can_make: what the imagined machine heats to.</param>
/// <param name="Like">Ids of the study's machines that heat like that.</param>
/// <param name="Total">Hours, or money in the currency of <c>sizing</c>, of all the work in a month.</param>
/// <param name="LeftOut">Projects of which nothing is known and which are therefore not in it.</param>
/// <param name="Steps">From each edge on (until the next).</param>
public sealed record MeasuredCurveDocument(
    [property: AllowedValues("hours", "money")] string Measure, [property: AllowedValues("fits", "can_make")] string Kind,
    HeatDocument? Heat, IReadOnlyList<string> Like, double Total, int LeftOut,
    IReadOnlyList<MeasuredStepDocument> Steps);

/// <param name="Fits">Made without a compromise.</param>
/// <param name="WithCompromise">Made with or without one.</param>
public sealed record MeasuredStepDocument(double EdgeMm, AmountDocument Fits, AmountDocument WithCompromise);

/// <summary>A share of the work with its interval: Wilson's for projects, for hours and money that of <c>docs/sizing.md</c>.</summary>
/// <param name="Count">Projects, hours or money, the last two in a month.</param>
public sealed record AmountDocument(double Count, double Share, double Low, double High);

/// <summary>The most of the work that one machine of the study takes, against what it may cost. Price is not size.</summary>
/// <param name="Measure">projects, hours or money.</param>
/// <param name="Kind">fits or can_make, the latter with heat, walls and the rules of the place.</param>
/// <param name="Total">Projects, or hours or money in a month.</param>
/// <param name="LeftOut">Projects of which nothing is known and which are therefore not in it.</param>
/// <param name="Steps">From each price on (until the next).</param>
public sealed record PriceCurveDocument(
    [property: AllowedValues("projects", "hours", "money")] string Measure, [property: AllowedValues("fits", "can_make")] string Kind,
    double Total, int LeftOut, IReadOnlyList<PriceStepDocument> Steps);

/// <param name="Price">In the currency of <c>sizing</c>.</param>
/// <param name="FitsMachine">Id of the machine that takes most without a compromise for up to this price.</param>
/// <param name="Machine">Id of the one that takes most with or without one.</param>
public sealed record PriceStepDocument(
    decimal Price, string FitsMachine, AmountDocument Fits, string Machine, AmountDocument WithCompromise);

/// <summary>What a project weighs.</summary>
/// <param name="Project">Its id.</param>
/// <param name="HoursPerMonth">By the shortest time of any machine; null where none is known.</param>
/// <param name="MoneyPerMonth">By the least cost of any machine with a price; null where none is known.</param>
public sealed record ProjectWeightDocument(string Project, double? HoursPerMonth, double? MoneyPerMonth);
