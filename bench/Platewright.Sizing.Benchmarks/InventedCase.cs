using System.Collections.Immutable;
using Platewright.Fit;
using Platewright.Machines;
using Platewright.Sizing.Cases;
using Platewright.Sizing.Hours;
using Platewright.Sizing.Money;

namespace Platewright.Sizing.Benchmarks;

/// <summary>A whole sizing case of invented work: projects of one to five parts, machines from small and slow to large and dear.</summary>
internal static class InventedCase
{
    private const int Seed = 7;

    public static SizingCase Of(int parts, int machines)
    {
        Random random = new(Seed);
        SizedMachine[] all =
        [
            .. Enumerable.Range(0, machines).Select(m => new SizedMachine(
                $"m{m}", $"machine {m}", 100 + 18 * m, 150 + 130 * m + random.Next(100), 0.1 + 0.05 * m, 45, Exhaust.None, new Upkeep())),
        ];
        List<WorkProject> projects = [];
        List<SizedProject> sized = [];
        for (int made = 0; made < parts;)
        {
            int count = Math.Min(parts - made, 1 + random.Next(5));
            WorkItem[] items = [.. Enumerable.Range(made, count).Select(i => Item(i, all, random))];
            bool[] can = [.. Enumerable.Range(0, machines).Select(m => items.All(i => i.On[m] is not null))];
            string id = $"p{projects.Count}";
            projects.Add(new WorkProject(
                projects.Count, id, id, false, 0.02 + 0.2 * random.NextDouble(), [.. can.Select(c => c ? FitClass.Fits : FitClass.No)],
                [.. can], [.. items]));
            sized.Add(new SizedProject(id, [.. items.Select(i => Need(i.Id, all, i))]));
            made += count;
        }
        AttendedWeek week = AttendedWeek.Of(AttendedWindow.On([DayOfWeek.Monday, DayOfWeek.Tuesday, DayOfWeek.Thursday], 480, 1020));
        return new SizingCase(
            [.. all], [.. projects], [], [.. sized], new WorkStatement(true, null, false), new Place(week, RunLimits.None), Aim.None,
            new CostAssumptions(), [], [], 0.95, 0.45);
    }

    private static WorkItem Item(int index, SizedMachine[] machines, Random random)
    {
        double edge = 30 + 380 * Math.Pow(random.NextDouble(), 2.5), hours = 0.3 + edge * edge / 6000 * random.NextDouble();
        ImmutableArray<Making?> on =
        [
            .. machines.Select((m, i) => m.EdgeMm < edge ? null : new Making(
                $"i{index}", FitClass.Fits, 3600 * hours * (1.6 - 0.03 * i), 300, 600, -0.25, 0.25, 20 * hours, 0.1 * hours, 200 + 20 * i, 22, false)),
        ];
        return new WorkItem($"i{index}", $"i{index}", 1 + random.Next(3), on, 3600 * hours, 20 * hours, false);
    }

    private static SizedPart Need(string id, SizedMachine[] machines, WorkItem item)
    {
        int first = item.On.ToList().FindIndex(o => o is not null);
        double edge = first < 0 ? 2 * machines[^1].EdgeMm : machines[first].EdgeMm - item.Quantity;
        ImmutableArray<BedAndHeight> curve = [.. Enumerable.Range(0, 8).Select(i => new BedAndHeight(edge * (0.7 + 0.1 * i), edge * (1.4 - 0.1 * i)))];
        return new SizedPart(id, null, new PartNeed(edge, edge, edge, edge, 1, curve, curve, null, null));
    }
}
