using CsCheck;
using Platewright.Sizing.Hours;

namespace Platewright.Tests.Sizing.Hours;

public sealed class PlaceLawTests
{
    private const long Cases = 4000;

    [Fact]
    public void Plan_AnyPlace_IsWhatSteppingFinds() =>
        Gen.Select(DrawnPlace.Windows, DrawnPlace.Limits, DrawnPlace.Build, DrawnPlace.Moment)
            .Sample((windows, limits, build, moment) =>
            {
                Place place = new(AttendedWeek.Of(windows), limits);
                SteppingOracle oracle = new(windows, limits);

                int? start = oracle.EarliestStart((int)Math.Round(moment / DrawnPlace.StepS), build);
                PlannedBuild? plan = place.Plan(moment, build);

                Assert.Equal(start * DrawnPlace.StepS, plan?.StartS);
                if (plan is not { } p) return;
                int? inHand = oracle.InHand(
                    (int)Math.Round(p.ReadyS / DrawnPlace.StepS), (int)(build.TakeOffS / DrawnPlace.StepS));
                Assert.Equal(inHand * DrawnPlace.StepS, p.InHandS);
            }, iter: Cases);

    [Fact]
    public void LongestRun_AnyPlace_MayJustStart() =>
        Gen.Select(DrawnPlace.Any, DrawnPlace.Build).Sample((place, build) =>
        {
            double longest = place.LongestRunWithS(build.PrepareS, build.ReleaseS, build.TakeOffS);

            if (double.IsInfinity(longest))
            {
                Assert.True(place.EverMakes(Running(1e8)));
                return;
            }
            if (longest > 0) Assert.True(place.EverMakes(Running(longest)));
            Assert.False(place.EverMakes(Running(longest + 1)));

            BuildStages Running(double runS) => new(runS, 0, build.ReleaseS, build.PrepareS, build.TakeOffS);
        }, iter: Cases);

    [Fact]
    public void Plan_MoreAttendedHours_IsNeverLater() =>
        Gen.Select(DrawnPlace.Windows, Gen.Int[0, 200], DrawnPlace.Limits, DrawnPlace.Build, DrawnPlace.Moment)
            .Sample((windows, left, limits, build, moment) =>
            {
                AttendedWindow[] fewer = [.. windows.Where((_, i) => (left >> i % 8 & 1) == 0)];
                if (fewer.Length == 0) return;
                NeverLater(
                    new Place(AttendedWeek.Of(windows), limits),
                    new Place(AttendedWeek.Of(fewer), limits),
                    build,
                    moment);
            }, iter: Cases);

    [Fact]
    public void Plan_LooserRules_IsNeverLater() =>
        Gen.Select(DrawnPlace.Windows, DrawnPlace.Limits, Gen.Int[0, 15], DrawnPlace.Build, DrawnPlace.Moment)
            .Sample((windows, limits, which, build, moment) =>
            {
                RunLimits looser = new()
                {
                    NightsAllowed = limits.NightsAllowed || (which & 1) > 0,
                    WeekendsAllowed = limits.WeekendsAllowed || (which & 2) > 0,
                    LongestUnattendedS = limits.LongestUnattendedS * ((which & 4) > 0 ? 2 : 1),
                    LessonS = (which & 8) > 0 ? null : limits.LessonS,
                };
                AttendedWeek week = AttendedWeek.Of(windows);
                NeverLater(new Place(week, looser), new Place(week, limits), build, moment);
            }, iter: Cases);

    [Fact]
    public void Plan_LaterMoment_IsNeverSooner() =>
        Gen.Select(DrawnPlace.Any, DrawnPlace.Build, DrawnPlace.Moment, Gen.Double[0, 1e6])
            .Sample((place, build, moment, later) =>
            {
                if (place.Plan(moment, build) is not { } plan) return;
                PlannedBuild after = place.Plan(moment + later, build)!.Value;
                Assert.True(after.StartS >= plan.StartS && after.InHandS >= plan.InHandS);
            }, iter: Cases);

    private static void NeverLater(Place better, Place worse, BuildStages build, double moment)
    {
        if (worse.Plan(moment, build) is not { } plan) return;
        PlannedBuild? other = better.Plan(moment, build);
        Assert.NotNull(other);
        Assert.True(other.Value.StartS <= plan.StartS && other.Value.InHandS <= plan.InHandS);
    }
}
