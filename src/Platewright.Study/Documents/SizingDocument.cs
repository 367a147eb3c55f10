using System.ComponentModel.DataAnnotations;
namespace Platewright.Study.Documents;

/// <summary>
/// Which machine, or which mix, the work needs: what is covered, what a larger one adds, what it costs, how soon a part is in hand,
/// and how sure all that is. Money is in <c>currency</c>; hours are machine hours; a month is a twelfth of a year.
/// </summary>
/// <param name="Workload">What the projects stand for.</param>
/// <param name="Place">Hours and rules of the place; null where the study file sets none.</param>
/// <param name="Aim">What the answer must reach, and its limits.</param>
/// <param name="Machines">One for each machine, in the order of <c>machines</c>.</param>
/// <param name="Levels">The smallest machines and boxes that cover certain shares of the projects.</param>
/// <param name="Larger">What each machine adds to the next smaller one.</param>
/// <param name="SameMoney">One large or several small; empty where no prices or times are known.</param>
/// <param name="BreakEvens">From which amount of work on the one costs less than the other.</param>
/// <param name="Mix">The cheapest machines that cover the aimed share; null where prices or times are missing.</param>
/// <param name="Front">Mixes that no other beats in everything; empty where there is no mix.</param>
/// <param name="Orders">So many by a day, on each machine.</param>
/// <param name="SelfMaking">Who could make the printed parts of a machine.</param>
/// <param name="Sensitivity">Which assumption, changed within its doubt, changes the answer.</param>
/// <param name="Assumptions">What money and time are reckoned with.</param>
/// <param name="Sheet">The decision on one page.</param>
public sealed record SizingDocument(
    string Currency, WorkloadDocument Workload, PlaceDocument? Place, AimDocument Aim, IReadOnlyList<MachineSizingDocument> Machines,
    IReadOnlyList<LevelDocument> Levels, IReadOnlyList<LargerDocument> Larger, IReadOnlyList<SameMoneyDocument> SameMoney,
    IReadOnlyList<BreakEvenDocument> BreakEvens, MixDocument? Mix, IReadOnlyList<FrontPointDocument> Front,
    IReadOnlyList<OrderDocument> Orders, IReadOnlyList<SelfMakingDocument> SelfMaking,
    IReadOnlyList<SensitivityDocument> Sensitivity, IReadOnlyList<AssumptionDocument> Assumptions, SheetDocument Sheet)
{
    /// <summary>Machine hours and money against the edge of a cube-shaped machine.</summary>
    public IReadOnlyList<MeasuredCurveDocument> Curves { get; init; } = [];

    /// <summary>Projects, hours and money against the price of a machine.</summary>
    public IReadOnlyList<PriceCurveDocument> PriceCurves { get; init; } = [];

    /// <summary>What each project weighs in those, in the order of the work.</summary>
    public IReadOnlyList<ProjectWeightDocument> Weights { get; init; } = [];
}

/// <param name="Sample">Whether the projects are a sample of more work like them.</param>
/// <param name="Population">Projects in all that work; null where not known.</param>
/// <param name="Projects">Counted, wanted ones included, without the printed parts of machines.</param>
/// <param name="Wanted">Of them never tried so far.</param>
/// <param name="ProjectsPerMonth">Made in a month.</param>
/// <param name="RatesAssumed">Nothing says how often: each is taken as made once a month, or its share of that.</param>
/// <param name="Reckoned">Parts whose hours and filament are reckoned from their size, since no machine makes them.</param>
public sealed record WorkloadDocument(
    bool Sample, int? Population, int Projects, int Wanted, double ProjectsPerMonth, bool RatesAssumed, int Reckoned);

/// <param name="AttendedHours">Hours of a week in which somebody is there.</param>
/// <param name="LongestRunH">Longest warm-up and build that can ever go on here, h; null for no limit.</param>
public sealed record PlaceDocument(
    double AttendedHours, bool Nights, bool Weekends, double? LongestUnattendedH, double? LessonMin, double? LongestRunH,
    string? Exhaust, bool LowEmissionOnly);

public sealed record AimDocument(
    double CoverShare, decimal? Budget, double? FloorM2, double? CircuitW, double? LoudestDb, int? MostMachines,
    IReadOnlyList<string> Owned);

/// <summary>One machine with all the work it can make whole.</summary>
/// <param name="Coverage">By measure.</param>
/// <param name="WithoutWanted">Projects it can make of those that are not only wanted.</param>
/// <param name="HoursPerMonth">Machine hours of that work in a month, if nothing fails.</param>
/// <param name="HoursOfOne">What one machine can give in a month with the hours and rules of the place.</param>
/// <param name="Needed">How many are needed, failed builds included; 0 where it makes nothing.</param>
/// <param name="TurnRound">Of a middling part that all machines make, so that they compare; null where there is none.</param>
/// <param name="PerMonth">A month of them; null where no price or no time is known.</param>
/// <param name="Upfront">Before the first part, tax included.</param>
/// <param name="FirstYear">Upfront and twelve months of running.</param>
/// <param name="LowPerMonth">Of the monthly total, at the study's confidence, by drawing all assumptions within their doubt.</param>
/// <param name="PerProject">What one project of the work costs on average, owning included.</param>
public sealed record MachineSizingDocument(
    string Machine, IReadOnlyList<MeasureDocument> Coverage, ShareDocument WithoutWanted, double HoursPerMonth, double HoursOfOne,
    int Needed, double? FloorM2, double? NoiseDb, string? Exhaust, double? PeakW, double? WarmUpS, TurnRoundDocument? TurnRound,
    CostDocument? PerMonth, decimal? Upfront, decimal? FirstYear, double? LowPerMonth, double? HighPerMonth, decimal? PerProject)
{
    /// <summary>In the currency of the study; null where it is not known.</summary>
    public decimal? Price { get; init; }

    /// <summary>What <see cref="PerMonth"/> is reckoned from; null as that.</summary>
    public CostBasisDocument? Basis { get; init; }
}

/// <summary>A share of the work by one measure, with its interval.</summary>
/// <param name="Measure">parts, projects, projects_as_made, hours, mass or money.</param>
/// <param name="CanMake">Share that the machine can make; null where nothing has a weight.</param>
/// <param name="Fits">Of it without a compromise.</param>
/// <param name="LeftOut">Projects whose weight is not known.</param>
public sealed record MeasureDocument(
    [property: AllowedValues("parts", "projects", "projects_as_made", "hours", "mass", "money")] string Measure, double? CanMake,
    double Low, double High, double? Fits, double FitsLow, double FitsHigh, int LeftOut);

/// <summary>From the model changed to the part in hand.</summary>
/// <param name="Part">Which part.</param>
/// <param name="MeanS">Over moments at which somebody is there, waits included.</param>
/// <param name="PrepareS">Somebody's time before.</param>
/// <param name="IterationsPerDay">Changes of the model in a working day; the fewest and most within the doubt of the time follow.</param>
public sealed record TurnRoundDocument(
    string Part, double MeanS, double BestS, double WorstS, double PrepareS, double WarmUpS, double BuildS, double ReleaseS,
    double TakeOffS, int IterationsPerDay, int Fewest, int Most);

/// <summary>An account line by line; <c>total</c> is their sum exactly.</summary>
public sealed record CostDocument(
    decimal Purchase, decimal PrintedParts, decimal Assembling, decimal Tuning, decimal OwningTax, decimal Maintaining, decimal Wear,
    decimal Energy, decimal Filament, decimal Handling, decimal FailedBuilds, decimal WorkTax, decimal Running, decimal Total);

/// <summary>What it takes to cover a share of the projects by fit and with the compromises that are accepted.</summary>
/// <param name="Share">0.5, 0.75, 0.9 or 1.</param>
/// <param name="Projects">How many projects that is.</param>
/// <param name="Listed">Id of the smallest machine of the study that can make so many; null where none does.</param>
/// <param name="Bundled">Name of the smallest bundled machine that holds so many; null where none does.</param>
/// <param name="CubeMm">Edge of the smallest cube that holds so many; null where no size does.</param>
/// <param name="BoxBedMm">Square bed of the box of least volume that holds so many.</param>
/// <param name="Curve">Beds and heights that do: rows of bed, height, mm.</param>
/// <param name="DecidedBy">The part that decides this step.</param>
/// <param name="MissesByMm">By how much the cube of the step before is too small for it; null at the first step.</param>
public sealed record LevelDocument(
    double Share, int Projects, string? Listed, string? Bundled, double? CubeMm, double? BoxBedMm, double? BoxHeightMm,
    IReadOnlyList<IReadOnlyList<double>> Curve, string? DecidedBy, double? MissesByMm);

/// <summary>What a machine adds to the next smaller one.</summary>
/// <param name="Gained">Projects that only the larger can make.</param>
/// <param name="Lost">Projects that only the smaller can make, as for want of heat.</param>
/// <param name="GainedNames">The first few of them.</param>
/// <param name="Share">Difference of the shares, with its interval.</param>
/// <param name="Sentence">Whether the sample tells them apart.</param>
/// <param name="MoreProjects">How many more projects would; null where they are told apart already or no reasonable number would.</param>
/// <param name="HoursPerMonth">Machine hours a month of what is gained.</param>
/// <param name="Price">Larger less smaller; so are the others. Null where one of them does not say.</param>
public sealed record LargerDocument(
    string Smaller, string Larger, int Gained, int Lost, IReadOnlyList<string> GainedNames, double Share, double Low, double High,
    double P, bool ToldApart, int? MoreProjects, string Sentence, double? HoursPerMonth, decimal? Price, double? FloorM2,
    double? WarmUpS, double? KwhPerMonth, double? PeakW);

/// <summary>One of a machine, or several of another for the same money.</summary>
public sealed record SameMoneyDocument(MoneySideDocument One, MoneySideDocument Many);

/// <param name="CanMake">Projects of the work it can make whole.</param>
/// <param name="PartsPerWeek">Working without a pause.</param>
/// <param name="OneDownPartsPerWeek">The same with one machine down; 0 where none is left.</param>
/// <param name="FirstInHandS">From when somebody comes on Monday until the quickest part is in hand.</param>
/// <param name="AllInHandS">All projects asked for at once then, each once: until the last part is in hand.</param>
public sealed record MoneySideDocument(
    string Machine, int Count, decimal Price, int CanMake, int Projects, double? PartsPerWeek, double OneDownPartsPerWeek,
    double? FirstInHandS, double? AllInHandS);

/// <summary>Two machines on the work that both can make.</summary>
/// <param name="Projects">How many projects that is.</param>
/// <param name="NowPerMonth">Made of them in a month now.</param>
/// <param name="AtPerMonth">Projects a month at which the cheaper changes; null where it never does up to <paramref name="MostPerMonth"/>.</param>
/// <param name="Low">Of it, at the study's confidence, over draws in which there is one.</param>
/// <param name="DrawsWithOne">Share of draws in which there is one.</param>
/// <param name="CheaperNow">Which is cheaper now.</param>
/// <param name="Surely">Share of draws in which it is.</param>
/// <param name="Points">Rows of projects a month, cost of the first, cost of the second.</param>
public sealed record BreakEvenDocument(
    string First, string Second, int Projects, double NowPerMonth, double? AtPerMonth, double? Low, double? High, double DrawsWithOne,
    double MostPerMonth, string CheaperNow, double Surely, IReadOnlyList<IReadOnlyList<double>> Points);

/// <summary>The cheapest set of machines for the aim.</summary>
/// <param name="Status">optimal, within, unreachable, undecided or no_room.</param>
/// <param name="Within">A cheaper one may save at most this share.</param>
/// <param name="Reachable">No mix covers a greater share.</param>
/// <param name="Blocking">Limits that, lifted alone, let the aim be reached: budget, floor, power, machines, counts.</param>
/// <param name="Price">For buying, tax included, owned machines excluded.</param>
/// <param name="NotMade">Names of projects that it does not make, the most often made first.</param>
/// <param name="Excluded">Machines left out, each with the reason in a sentence.</param>
public sealed record MixDocument(
    [property: AllowedValues("optimal", "within", "unreachable", "undecided", "no_room")] string Status, double Within, IReadOnlyList<MixMachineDocument> Machines, double Aimed, double Covered, double Reachable,
    IReadOnlyList<string> Blocking, decimal PerMonth, decimal OwningPerMonth, decimal RunningPerMonth, decimal Price, decimal FirstYear,
    double FloorM2, double PeakW, IReadOnlyList<string> NotMade, IReadOnlyList<string> Excluded);

/// <param name="Owned">How many of <paramref name="Count"/> are there already.</param>
public sealed record MixMachineDocument(
    string Machine, string Name, int Count, int Owned, double HoursUsed, double HoursOfOne, decimal? PriceEach)
{
    /// <summary>What the mix gives it to make in a month; null on the front, where nothing is given out.</summary>
    public LoadDocument? Load { get; init; }
}

/// <param name="Counts">Machines with their numbers.</param>
/// <param name="CheapestFor">The share of what can be reached that it is proved or nearly the cheapest for; null for the others.</param>
public sealed record FrontPointDocument(
    IReadOnlyList<MixMachineDocument> Counts, double Covered, decimal PerMonth, double TurnRoundH, double FloorM2, double PeakW,
    double? CheapestFor);

/// <summary>So many of a project by a day.</summary>
/// <param name="From">As "tuesday 10:00".</param>
public sealed record OrderDocument(string Project, int Copies, string From, string By, IReadOnlyList<OrderOnDocument> On);

/// <param name="CanMake">Whether the machine can make the project at all here.</param>
/// <param name="Done">Copies in hand by then on one machine.</param>
/// <param name="LastInHandS">From the start until the last is in hand; null where that never happens.</param>
/// <param name="LeastMachines">How many machines would do it; null where no number of them does.</param>
/// <param name="Limit">none, nights, weekends, unattended, lesson, rules, attended, machine_hours.</param>
public sealed record OrderOnDocument(
    string Machine, bool CanMake, bool InTime, int Done, double? LastInHandS, int? LeastMachines,
    [property: AllowedValues("none", "nights", "weekends", "unattended", "lesson", "rules", "attended", "machine_hours")] string Limit);

/// <summary>The printed parts of a machine.</summary>
/// <param name="Of">The machine they are for.</param>
/// <param name="Alone">Ids of machines that make all of them.</param>
/// <param name="Together">Smallest sets of machines that do it between them, where none does alone.</param>
/// <param name="Missing">Names of parts that no machine of the study makes.</param>
/// <param name="Cost">On the cheapest machine that makes all; null where none does or no time is known.</param>
public sealed record SelfMakingDocument(
    string Of, int Parts, IReadOnlyList<string> Alone, IReadOnlyList<IReadOnlyList<string>> Together, IReadOnlyList<string> Missing,
    decimal? Cost, double? Hours)
{
    /// <summary>The set made once on each machine that makes all of it, where a price and all times are known.</summary>
    public IReadOnlyList<MachineLoadDocument> Loads { get; init; } = [];
}

/// <summary>An assumption changed within its doubt.</summary>
/// <param name="Assumption">Its key, as <c>cost.failure_share</c>.</param>
/// <param name="What">In words.</param>
/// <param name="LowAnswer">The mix with the low value, as "2 × generic 210 enclosed".</param>
/// <param name="Changes">Whether one of the two answers differs from the recommended one.</param>
public sealed record SensitivityDocument(
    string Assumption, string What, double Value, double Low, double High, string Answer, string LowAnswer, string HighAnswer,
    decimal LowPerMonth, decimal HighPerMonth, bool Changes);

/// <param name="Key">Where it stands in the study file.</param>
/// <param name="Unit">As EUR/kWh; empty for a share.</param>
public sealed record AssumptionDocument(string Key, string What, string Unit, double Value, double Low, double High, string Source);

/// <summary>The decision on one page, in plain language.</summary>
/// <param name="Recommendation">What to do.</param>
/// <param name="Reasons">Three of them.</param>
/// <param name="NotPossible">What will not be possible.</param>
/// <param name="Doubt">How sure it is.</param>
/// <param name="Alternatives">What else would do, and what that changes.</param>
/// <param name="Assumptions">With their sources.</param>
/// <param name="Cautions">Where the work can hurt somebody.</param>
public sealed record SheetDocument(
    string Title, IReadOnlyList<SentenceDocument> Recommendation, IReadOnlyList<SentenceDocument> Reasons,
    IReadOnlyList<SentenceDocument> NotPossible, IReadOnlyList<SentenceDocument> Doubt,
    IReadOnlyList<SentenceDocument> Alternatives, IReadOnlyList<SentenceDocument> Assumptions, IReadOnlyList<SentenceDocument> Cautions);

/// <summary>A sentence that can be rebuilt: its pattern with each {n} replaced by the n-th value.</summary>
/// <param name="Text">What is read.</param>
/// <param name="Pattern">Without any number of its own.</param>
public sealed record SentenceDocument(string Text, string Pattern, IReadOnlyList<ValueDocument> Values);

/// <param name="At">RFC 6901 pointer into study.json.</param>
/// <param name="As">text, count, percent, points, money, hours, time, mm, m2, watts, kwh, number.</param>
public sealed record ValueDocument(string At, string As);
