using System.Collections.Immutable;
using Platewright.Fit;
using Platewright.Machines;
using Platewright.Sizing;
using Platewright.Sizing.Cases;
using Platewright.Sizing.Hours;
using Platewright.Sizing.Money;

namespace Platewright.Tests.Sizing.Answers;

/// <summary>Sizing cases to ask: small ones by hand, large ones by chance with a fixed seed.</summary>
internal static class Cases
{
    public static readonly Place Always = new(AttendedWeek.Always, RunLimits.None);

    public static SizedMachine Machine(string id, double edge, decimal? price) =>
        new(id, id, edge, price, edge * edge / 1e6, null, null, new Upkeep());

    /// <summary>A project of one part; machines without a time cannot make it.</summary>
    public static WorkProject Project(int index, double perMonth, params double?[] hours) => new(
        index, $"p{index}", $"project {index}", false, perMonth,
        [.. hours.Select(h => h is null ? FitClass.No : FitClass.Fits)], [.. hours.Select(h => h is not null)],
        [
            new WorkItem(
                $"p{index}-1", $"part {index}", 1,
                [.. hours.Select(h => h is { } time ? new Making($"p{index}-1", FitClass.Fits, 3600 * time, 0, 0, -0.2, 0.2, 100, 1, 200, 20, false) : null)],
                3600 * hours.Min(), 100, false),
        ]);

    public static SizingCase Of(ImmutableArray<SizedMachine> machines, params WorkProject[] projects) => new(
        machines, [.. projects], [], [.. projects.Select((p, i) => Sized(p.Id, 50 + 10 * i))], new WorkStatement(true, null, false), Always, Aim.None,
        new CostAssumptions(), [], [], 0.95, 0.45);

    public static SizedProject Sized(string id, double edge) => new(
        id, [new SizedPart($"{id}-1", null, new PartNeed(edge, edge, edge, edge, 1, [new BedAndHeight(edge, edge)], [new BedAndHeight(edge, edge)], null, null))]);
}
