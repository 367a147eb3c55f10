namespace Platewright.Sizing.Hours;

/// <summary>
/// How often one machine brings a changed model into somebody's hand: change, part in hand, look, change again. Longer
/// machine times never give more.
/// </summary>
/// <param name="Count">With the times given.</param>
/// <param name="Fewest">With the longest times their doubt allows.</param>
/// <param name="Most">With the shortest.</param>
public sealed record Iterations(int Count, int Fewest, int Most)
{
    /// <summary>
    /// Parts in hand in one working day, from the first attended moment of the day to the last; 0 where nobody is
    /// there. A build left overnight is in hand the next day: <see cref="InWeek"/> counts it.
    /// </summary>
    /// <param name="place">Hours and rules.</param>
    /// <param name="stages">What a build takes.</param>
    /// <param name="lookS">Looking at a part and changing the model, s, 0 or more.</param>
    /// <param name="day">Which day.</param>
    /// <param name="doubt">Of the machine's times.</param>
    public static Iterations InDay(Place place, BuildStages stages, double lookS, DayOfWeek day, TimeDoubt doubt)
    {
        double midnight = WeekTime.Moment(day, 0);
        // Parts are in hand in attended time only: midnight bounds the day as well as the last one leaving does.
        return Between(place, stages, lookS, midnight, midnight + WeekTime.DayS, doubt);
    }

    /// <summary>Parts in hand in one week from Monday 00:00 on.</summary>
    /// <inheritdoc cref="InDay"/>
    public static Iterations InWeek(Place place, BuildStages stages, double lookS, TimeDoubt doubt) =>
        Between(place, stages, lookS, 0, WeekTime.WeekS, doubt);

    private static Iterations Between(
        Place place, BuildStages stages, double lookS, double fromS, double toS, TimeDoubt doubt)
    {
        if (!(lookS >= 0 && double.IsFinite(lookS)))
            throw new ArgumentOutOfRangeException(nameof(lookS), lookS, "Expected 0 s or more.");
        return new Iterations(Count(1), Count(doubt.High), Count(doubt.Low));

        int Count(double factor)
        {
            BuildStages timed = stages.WithMachineTimes(factor);
            int count = 0;
            double now = place.AttendedFrom(fromS);
            while (place.Plan(now, timed) is { } plan && plan.InHandS <= toS + WeekTime.SameMomentS)
            {
                count++;
                now = plan.InHandS + lookS;
            }
            return count;
        }
    }
}
