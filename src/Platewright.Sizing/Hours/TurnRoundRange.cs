namespace Platewright.Sizing.Hours;

/// <summary>The turn-round over all moments at which somebody is there to change a model.</summary>
/// <param name="Best">The shortest.</param>
/// <param name="Mean">Mean of every stage, each attended moment of the week counting alike.</param>
/// <param name="Worst">The longest; where it is met only just after a moment, as near to it as one likes.</param>
public sealed record TurnRoundRange(TurnRound Best, TurnRound Mean, TurnRound Worst)
{
    /// <summary>Exact over the week; null where this build can never be made here.</summary>
    /// <remarks>
    /// While the moment moves on, a wait either stays or shrinks as fast as the moment moves. It changes from one to
    /// the other, or jumps, only at the ends of attended time, at the last moment for a start in it, and where the part
    /// is ready at one of those ends. Between two of them both waits are linear: two values tell all.
    /// </remarks>
    /// <param name="place">Hours and rules.</param>
    /// <param name="stages">What the build takes.</param>
    public static TurnRoundRange? Of(Place place, BuildStages stages)
    {
        if (!place.EverMakes(stages)) return null;
        double[] turns = [.. TurningPoints(place, stages).Select(WeekTime.WithinWeek).Append(0).Order()];
        TurnRound? best = null;
        TurnRound? worst = null;
        double sumStart = 0, sumTakeOff = 0, sumS = 0;
        for (int i = 0; i < turns.Length; i++)
        {
            double from = turns[i];
            double length = (i + 1 < turns.Length ? turns[i + 1] : WeekTime.WeekS) - from;
            double middle = from + length / 2;
            if (length <= WeekTime.SameMomentS || place.AttendedFrom(middle) > middle) continue;
            PlannedBuild atMiddle = place.Plan(middle, stages)!.Value;
            PlannedBuild atQuarter = place.Plan(from + length / 4, stages)!.Value;
            Keep(Ends(atMiddle, atQuarter, 2, -1));
            Keep(Ends(atMiddle, atQuarter, -2, 3));
            sumStart += length * atMiddle.WaitToStartS;
            sumTakeOff += length * atMiddle.WaitToTakeOffS;
            sumS += length;
        }
        if (best is null || worst is null) return null;
        return new TurnRoundRange(best, TurnRound.With(stages, sumStart / sumS, sumTakeOff / sumS), worst);

        TurnRound Ends(PlannedBuild middle, PlannedBuild quarter, double ofQuarter, double ofMiddle) => TurnRound.With(
            stages,
            Math.Max(0, ofQuarter * quarter.WaitToStartS + ofMiddle * middle.WaitToStartS),
            Math.Max(0, ofQuarter * quarter.WaitToTakeOffS + ofMiddle * middle.WaitToTakeOffS));

        void Keep(TurnRound one)
        {
            if (best is null || one.TotalS < best.TotalS) best = one;
            if (worst is null || one.TotalS > worst.TotalS) worst = one;
        }
    }

    private static IEnumerable<double> TurningPoints(Place place, BuildStages stages)
    {
        double untilReady = stages.PrepareS + stages.MachineS;
        foreach (Stretch stretch in place.Week.Stretches)
        {
            yield return stretch.StartS;
            yield return stretch.EndS;
            yield return place.LastStartInS(stretch, stages);
            yield return stretch.StartS - untilReady;
            yield return stretch.EndS - stages.TakeOffS - untilReady;
        }
    }
}
