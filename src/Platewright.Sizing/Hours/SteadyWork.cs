using System.Collections.Immutable;

namespace Platewright.Sizing.Hours;

/// <summary>Machines that never lack work, event by event.</summary>
/// <remarks>
/// Each class has its turn in rounds of about a week's work: nobody may be more than two rounds ahead of the slowest,
/// so the mix keeps its proportions, and within them a machine takes what makes it wait least. The first weeks, in which
/// the machines still start together, are left out. What overlaps the ends of the measured weeks counts with the share
/// that lies inside: with somebody always there the result is exact, else the ends tell wrong by less than one build of
/// each machine in all the weeks.
/// </remarks>
/// <param name="MachineHoursPerWeek">Warm-up, build and cool-down, h per week.</param>
/// <param name="WaitedHoursPerWeek">Waiting for somebody, h per week.</param>
/// <param name="Weeks">Weeks measured.</param>
internal sealed record SteadyWork(double MachineHoursPerWeek, double WaitedHoursPerWeek, int Weeks)
{
    /// <summary>Weeks that are left out.</summary>
    private const int LeadInWeeks = 2;

    /// <summary>A year's weeks: classes that have their turn once a month still have a dozen.</summary>
    private const int MostWeeks = 52;

    /// <summary>Two months at least, however many builds a week has.</summary>
    private const int FewestWeeks = 8;

    /// <summary>Builds after which more of them hardly move a mean; they bound the work done.</summary>
    private const int EnoughBuilds = 4000;

    public static SteadyWork Of(Place place, ImmutableArray<MixJob> classes, int machines)
    {
        double roundMixes = ThroughputBound.MixesPerWeek(place, classes, machines);
        double roundBuilds = roundMixes * classes.Sum(j => j.PerWeek);
        int weeks = (int)Math.Clamp(EnoughBuilds / roundBuilds, FewestWeeks, MostWeeks);
        // A build longer than the weeks has to be seen whole.
        weeks += (int)Math.Ceiling(classes.Max(j => j.Stages.BusyS) / WeekTime.WeekS);
        double fromS = LeadInWeeks * WeekTime.WeekS;
        double toS = fromS + weeks * WeekTime.WeekS;

        Turns turns = new([.. classes.Select(j => j.PerWeek * roundMixes)]);
        BuildStages[] stages = [.. classes.Select(j => j.Stages)];
        PriorityQueue<int, (double FreeS, int Machine)> free = new();
        for (int m = 0; m < machines; m++) free.Enqueue(m, (0, m));
        double machineS = 0, waitedS = 0;
        while (free.TryDequeue(out int machine, out (double FreeS, int Machine) at) && at.FreeS < toS)
        {
            (int i, PlannedBuild build) = LeastWaiting.Choose(place, at.FreeS, stages, turns.MayTake)
                ?? throw new InvalidOperationException("A class that can be made found no start.");
            turns.Take(i);
            machineS += Inside(build.StartS + stages[i].PrepareS, build.ReadyS);
            waitedS += Inside(build.AskedS, build.StartS) + Inside(build.ReadyS, build.TakenOffFromS);
            free.Enqueue(machine, (build.InHandS, machine));
        }
        return new SteadyWork(machineS / weeks / WeekTime.HourS, waitedS / weeks / WeekTime.HourS, weeks);

        double Inside(double startS, double endS) => Math.Max(0, Math.Min(endS, toS) - Math.Max(startS, fromS));
    }

    /// <summary>Whose turn it is: builds started of each class against rounds of the mix.</summary>
    private sealed class Turns(double[] perRound)
    {
        private const int RoundsAhead = 2;
        private readonly long[] _started = new long[perRound.Length];
        private long _emptied;

        public bool MayTake(int i) => _started[i] < Due(i, _emptied + RoundsAhead);

        public void Take(int i)
        {
            _started[i]++;
            while (Enumerable.Range(0, perRound.Length).All(j => _started[j] >= Due(j, _emptied + 1))) _emptied++;
        }

        /// <summary>Builds of a class in the first rounds; classes with less than one a round take turns.</summary>
        private long Due(int i, long rounds) =>
            (long)Math.Floor(rounds * perRound[i] + (i + 0.5) / perRound.Length);
    }
}
