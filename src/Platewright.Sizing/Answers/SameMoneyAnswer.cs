using System.Collections.Immutable;
using Platewright.Sizing.Cases;
using Platewright.Sizing.Hours;

namespace Platewright.Sizing.Answers;

/// <summary>One large machine or several small ones for the same money, on the whole work.</summary>
/// <param name="FirstOfOneS">Until the quickest part is in hand, from when somebody comes on Monday, s; null where none is made.</param>
/// <param name="FirstOfManyS">The same with the small ones.</param>
public sealed record SameMoneyAnswer(SameMoneyQuestion Question, SameMoney Sides, double? FirstOfOneS, double? FirstOfManyS)
{
    /// <summary>
    /// The questions of the study; where it asks none, the dearest machine against the one below that makes most of the work, if its
    /// money buys at least two of them.
    /// </summary>
    public static ImmutableArray<SameMoneyAnswer> Of(SizingCase c) =>
        [.. (c.SameMoney.IsEmpty ? Usual(c) : c.SameMoney).Select(q => Of(c, q)).OfType<SameMoneyAnswer>()];

    private static IEnumerable<SameMoneyQuestion> Usual(SizingCase c)
    {
        int[] priced = [.. Enumerable.Range(0, c.Machines.Length).Where(m => c.Machines[m].Price > 0)];
        if (priced.Length < 2) return [];
        int one = priced.MaxBy(m => c.Machines[m].Price);
        int[] cheap = [.. priced.Where(m => 2 * c.Machines[m].Price <= c.Machines[one].Price)];
        return cheap.Length == 0 ? [] : [new SameMoneyQuestion(one, cheap.MaxBy(m => c.Projects.Count(p => p.CanMake[m])), null)];
    }

    private static SameMoneyAnswer? Of(SizingCase c, SameMoneyQuestion q)
    {
        if (c.Machines[q.One].Price is not > 0 || c.Machines[q.Many].Price is not > 0) return null;
        ComparedJob[] jobs =
        [
            .. from project in c.Projects
               where project.PerMonth > 0
               from item in project.Items
               where item.On[q.One]?.TimeS is not null || item.On[q.Many]?.TimeS is not null
               select new ComparedJob(
                   item.Name, item.Quantity * project.PerMonth / WeekTime.WeeksPerMonth, 1, item.Quantity, Stages(item, q.One), Stages(item, q.Many)),
        ];
        if (jobs.Length == 0) return null;
        double start = c.Place.AttendedFrom(0);
        SameMoney sides = SameMoney.Of(
            c.Place, jobs, (double)c.Machines[q.One].Price!.Value, (double)c.Machines[q.Many].Price!.Value, start, q.Count);
        return new SameMoneyAnswer(
            q, sides, First(jobs.Select(j => j.OnLarge)), sides.Small.Machines > 0 ? First(jobs.Select(j => j.OnSmall)) : null);

        double? First(IEnumerable<BuildStages?> builds) =>
            builds.OfType<BuildStages>().Min(b => c.Place.Plan(start, b)?.InHandS) - start;

        BuildStages? Stages(WorkItem item, int machine) =>
            item.On[machine] is { TimeS: not null } making ? Loads.StagesOf(making, c.Costs) : null;
    }
}
