using System.Globalization;

namespace Platewright.Machines;

/// <summary>Seconds that a known job takes on a machine, warm-up included.</summary>
public delegate double JobTiming(Machine machine);

/// <summary>
/// Finds speed and acceleration from one job whose time was measured. Both are moved together, on a logarithmic scale,
/// from the low to the high end of their ranges; the estimated time falls along that way, and where it meets the measured
/// one is taken. What was stated stays.
/// </summary>
public static class JobCalibration
{
    /// <summary>How far one job's time may be off for other reasons: our choice.</summary>
    public const double OneJobDoubt = 0.1;

    // How far beyond the ends the time may still speak of the drives: an estimate may miss by that much. Our choice.
    private const double Beyond = 0.25;

    private const double CloseEnough = 2e-3;

    private const int MostTrials = 25;

    private const int Digits = 3;

    private static readonly string[] Keys = ["motion.speed_mm_s", "motion.acceleration_mm_s2"];

    /// <param name="filled">The machine; speed and acceleration without a range are not moved.</param>
    /// <param name="timing">Estimates the job; called up to some fifty times.</param>
    /// <param name="measuredS">From start to finish, s, greater than 0.</param>
    public static FilledMachine Fit(FilledMachine filled, JobTiming timing, double measuredS)
    {
        MachineParameter[] moved = [.. Keys.Select(k => MachineParameters.Find(k)!).Where(p => p.RangeOf(filled.Machine) is not null)];
        if (moved.Length == 0) return Told(filled, "The measured job changes nothing: speed and acceleration are stated.");
        (double slowest, double fastest) = (Seconds(-1), Seconds(1));
        string plausible = $"The job took {Minutes(measuredS)}; for such a machine between {Minutes(fastest)} and "
            + $"{Minutes(slowest)} is plausible";
        if (measuredS > slowest * (1 + Beyond) || measuredS < fastest * (1 - Beyond))
        {
            return Told(
                filled, $"{plausible}. Speed and acceleration stay at their typical values: check the time, the recipe, and "
                + "whether waiting was counted.");
        }
        double found = Place(measuredS);
        (double low, double high) = (Place(measuredS * (1 + OneJobDoubt)), Place(measuredS * (1 - OneJobDoubt)));
        if (found is -1 or 1)
        {
            // The end itself would leave no range; all on this side of the typical value stays possible.
            (low, high) = found < 0 ? (-1, 0) : (0, 1);
            filled = Told(filled, $"{plausible}. Speed and acceleration are taken from that end; the rest lies elsewhere.");
        }
        Machine machine = filled.Machine;
        var (ranges, origins) = (machine.Ranges, filled.Origins);
        foreach (MachineParameter p in moved)
        {
            machine = p.With(machine, Rounded(p, found));
            ranges = ranges.SetItem(p.Key, new ValueRange(Rounded(p, low), Rounded(p, high)));
            origins = origins.SetItem(p.Key, $"from the job measured at {Minutes(measuredS)}");
        }
        return filled with { Machine = machine with { Ranges = ranges }, Origins = origins };

        double Rounded(MachineParameter p, double place) => Significant.Round(ValueAt(p, filled.Machine, place), Digits);

        double Seconds(double place) =>
            timing(moved.Aggregate(filled.Machine, (m, p) => p.With(m, ValueAt(p, filled.Machine, place))));

        // Halving: the time falls from -1 to 1. A time outside takes the nearer end.
        double Place(double seconds)
        {
            if (seconds >= slowest) return -1;
            if (seconds <= fastest) return 1;
            double from = -1, to = 1;
            for (int i = 0; i < MostTrials; i++)
            {
                double middle = (from + to) / 2, time = Seconds(middle);
                if (Math.Abs(time - seconds) <= CloseEnough * seconds) return middle;
                if (time > seconds) from = middle;
                else to = middle;
            }
            return (from + to) / 2;
        }
    }

    /// <summary>−1 is the low end of the range, 0 the value, 1 the high end.</summary>
    private static double ValueAt(MachineParameter parameter, Machine machine, double place)
    {
        (double value, ValueRange range) = (parameter.Of(machine)!.Value, parameter.RangeOf(machine)!.Value);
        double end = place < 0 ? range.Low : range.High;
        return value * Math.Pow(end / value, Math.Abs(place));
    }

    private static FilledMachine Told(FilledMachine filled, string sentence) =>
        filled with { Notes = filled.Notes.Add(sentence) };

    private static string Minutes(double seconds) =>
        string.Create(CultureInfo.InvariantCulture, $"{Math.Floor(seconds / 3600):0}:{Math.Floor(seconds / 60 % 60):00} h");
}
