using CsCheck;
using Platewright.Sizing.Hours;

namespace Platewright.Tests.Sizing.Hours;

/// <summary>Places and builds on a grid of a quarter of an hour, so that stepping through it tells everything.</summary>
internal static class DrawnPlace
{
    public const double StepS = 900;

    public const int StepsPerDay = 96;

    private static readonly Gen<AttendedWindow[]> Day =
        from count in Gen.Frequency((2, Gen.Const(0)), (4, Gen.Const(1)), (2, Gen.Const(2)))
        from ends in Gen.Shuffle(Enumerable.Range(0, StepsPerDay + 1).ToArray(), 2 * count)
        select Pairs(ends.Order().ToArray());

    public static readonly Gen<AttendedWindow[]> Windows =
        Day.Array[7].Select(days => days.SelectMany((d, i) => d.Select(w => w with { Day = (DayOfWeek)i })).ToArray())
            .Where(windows => windows.Length > 0);

    public static readonly Gen<RunLimits> Limits =
        from nights in Gen.Bool
        from weekends in Gen.Bool
        from unattended in Maybe(1, Steps(0, 80))
        from lesson in Maybe(4, Steps(1, 20))
        select new RunLimits
        {
            NightsAllowed = nights,
            WeekendsAllowed = weekends,
            LongestUnattendedS = unattended,
            LessonS = lesson,
        };

    public static readonly Gen<Place> Any =
        Gen.Select(Windows, Limits, (windows, limits) => new Place(AttendedWeek.Of(windows), limits));

    public static readonly Gen<BuildStages> Build =
        from run in Gen.OneOf(Steps(1, 16), Steps(1, 400))
        from release in Steps(0, 4)
        from prepare in Steps(0, 2)
        from takeOff in Steps(0, 2)
        select new BuildStages(run, 0, release, prepare, takeOff);

    public static readonly Gen<double> Moment = Steps(-700, 2100);

    private static Gen<double?> Maybe(int nullsToOne, Gen<double> gen) =>
        Gen.Frequency((nullsToOne, Gen.Const((double?)null)), (1, gen.Select(s => (double?)s)));

    private static Gen<double> Steps(int from, int to) => Gen.Int[from, to].Select(n => n * StepS);

    private static AttendedWindow[] Pairs(int[] ends) =>
    [
        .. Enumerable.Range(0, ends.Length / 2)
            .Select(i => new AttendedWindow(DayOfWeek.Monday, ends[2 * i] * StepS / 60, ends[2 * i + 1] * StepS / 60)),
    ];
}
