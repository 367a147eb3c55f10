using System.Collections.Immutable;
using Platewright.Sizing.Hours;
using Platewright.Sizing.Money;

namespace Platewright.Sizing.Cases;

/// <summary>Everything that sizing looks at: what it answers follows from this and nothing else.</summary>
/// <param name="Machines">In the order of the study.</param>
/// <param name="Projects">The work, wanted projects included; without the printed parts of machines.</param>
/// <param name="PrintedParts">Sets of printed parts of machines, with the machine each is for.</param>
/// <param name="Sized">What the same projects need of an imagined machine, in the same order.</param>
/// <param name="Place">Hours and rules of the place.</param>
/// <param name="Confidence">Of intervals, between 0 and 1.</param>
/// <param name="BeadWidthMm">A wall thinner than this cannot be made, mm.</param>
public sealed record SizingCase(
    ImmutableArray<SizedMachine> Machines, ImmutableArray<WorkProject> Projects, ImmutableArray<PrintedSet> PrintedParts,
    ImmutableArray<SizedProject> Sized, WorkStatement Work, Place Place, Aim Aim, CostAssumptions Costs,
    ImmutableArray<Order> Orders, ImmutableArray<SameMoneyQuestion> SameMoney, double Confidence, double BeadWidthMm)
{
    /// <summary>Ways of heating among the machines, each with a curve of its own.</summary>
    public ImmutableArray<HeatLevel> Heats { get; init; } = [];
}

/// <summary>The printed parts of a machine, as a project.</summary>
/// <param name="Of">Name or id of the machine they are for; it need not be one of the study.</param>
public sealed record PrintedSet(string Of, WorkProject Set);

/// <summary>So many of a project by a moment.</summary>
/// <param name="Project">Its place among the projects of the case.</param>
/// <param name="FromS">When the first may start, s of the week.</param>
/// <param name="ByS">When the last must be in hand, s of the same week; later.</param>
public sealed record Order(int Project, int Copies, double FromS, double ByS);

/// <summary>One of this machine, or several of that for the same money?</summary>
/// <param name="One">Its place among the machines.</param>
/// <param name="Many">The place of the other.</param>
/// <param name="Count">How many; null for as many as the money buys.</param>
public sealed record SameMoneyQuestion(int One, int Many, int? Count);
