using System.Collections.Immutable;

namespace Platewright.Sizing.Hours;

/// <summary>Machines that never lack work, event by event.</summary>
/// <remarks>
/// Each class has its turn in rounds of about a week's work. What is overdue gains weight, so the mix keeps its
/// proportions, and a machine takes what keeps it least longer than it must. A planner who looks ahead may do better:
/// the result can be reached, the bound cannot be exceeded.
/// The first weeks, in which the machines still start together, are left out. What overlaps the ends of the measured weeks counts with the share
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

        BuildStages[] stages = [.. classes.Select(j => j.Stages)];
        Turns turns = new([.. classes.Select(j => j.PerWeek * roundMixes)], [.. stages.Select(s => s.BusyS)]);
        LeastWaiting rule = new(place, stages);
        PriorityQueue<int, (double FreeS, int Machine)> free = new();
        for (int m = 0; m < machines; m++) free.Enqueue(m, (0, m));
        double machineS = 0, waitedS = 0;
        while (free.TryDequeue(out int machine, out (double FreeS, int Machine) at) && at.FreeS < toS)
        {
            (int i, PlannedBuild build) = rule.Choose(at.FreeS, turns.Weight)
                ?? throw new InvalidOperationException("A class that can be made found no start.");
            turns.Take(i);
            machineS += Inside(build.StartS + stages[i].PrepareS, build.ReadyS);
            waitedS += Inside(build.AskedS, build.StartS) + Inside(build.ReadyS, build.TakenOffFromS);
            free.Enqueue(machine, (build.InHandS, machine));
        }
        return new SteadyWork(machineS / weeks / WeekTime.HourS, waitedS / weeks / WeekTime.HourS, weeks);

        double Inside(double startS, double endS) => Math.Max(0, Math.Min(endS, toS) - Math.Max(startS, fromS));
    }

    /// <summary>
    /// Whose turn it is. The clock is the mixes started; build k of a class falls due at (k − phase) / builds per mix.
    /// What is overdue gains weight, so that nothing is put off for long.
    /// </summary>
    private sealed class Turns(double[] perRound, double[] busyS)
    {
        /// <summary>Rounds overdue that weigh e times as much; our choice: less wastes hours, more drifts.</summary>
        private const double Patience = 1;
        private const double GoldenSection = 0.618033988749894848;
        private readonly double _roundS = perRound.Zip(busyS, (n, s) => n * s).Sum();
        private readonly double[] _nextDue = [.. perRound.Select((n, i) => (1 - Phase(i)) / n)];
        private double _clock;

        /// <summary>1 where it falls due now, and the more the longer it is overdue.</summary>
        public double Weight(int i) => Math.Max(double.Epsilon, Math.Exp((_clock - _nextDue[i]) / Patience));

        public void Take(int i)
        {
            _nextDue[i] += 1 / perRound[i];
            _clock += busyS[i] / _roundS;
        }

        /// <summary>
        /// Neighbours, alike in length, fall due far apart: multiples of the golden section spread evenly.
        /// </summary>
        private static double Phase(int i) => (i + 0.5) * GoldenSection - Math.Floor((i + 0.5) * GoldenSection);
    }
}
