using CsCheck;
using Platewright.Fit;
using Platewright.Machines;
using Platewright.Sizing;

namespace Platewright.Tests.Sizing;

public sealed class ProjectNeedTests
{
    [Fact]
    public void Of_PartForbiddenToTurn_NeedsItsDrawnSize()
    {
        SizeNeed size = new(100, 90, 89.9, [new(100, 100)], [new(90, 90)]);

        Allowance asDrawn = new(Turn: false, Tilt: false, LeastScale: 1);
        PartNeed need = PartNeed.Of(size, new(150, 20, 30), asDrawn, null, null);

        Assert.Equal(150, need.CubeTurnedMm);
        Assert.Equal([new BedAndHeight(150, 30)], need.TurnedCurve);
        Assert.Null(need.CubeTiltedMm);
        Assert.Null(need.CubeScaledMm);
        Assert.Null(need.CubeTiltedAtLeastMm);
    }

    [Fact]
    public void Of_ProjectWithAlternatives_TakesTheMostOfPartsAndTheLeastOfAlternatives()
    {
        PartNeed need = ProjectNeed.Of(Work.Project(
            "hood",
            Work.Part("shell", Work.Need(120, 110, leastScale: 0.9, heat: new(230, 70, 0), wall: 1)),
            Work.Part("long", Work.Need(200, 150, heat: new(260, 90, 45), wall: 2), "ring"),
            Work.Part("short", Work.Need(90, 85, heat: new(210, 100, 0), wall: 0.8), "ring")))!;

        Assert.Equal(120, need.CubeTurnedMm);
        Assert.Equal(110, need.CubeTiltedMm);
        Assert.Equal(99, need.CubeScaledMm!.Value, 1e-9);
        Assert.Equal(new HeatLimits(230, 90, 0), need.Heat);
        Assert.Equal(1, need.ThinnestWallMm);
        Assert.Equal([new BedAndHeight(120, 120)], need.TurnedCurve);
    }

    [Fact]
    public void Of_IncompleteProject_IsUnknown() =>
        Assert.Null(ProjectNeed.Of(new SizedProject("lost", [Work.Part("a", Work.Need(10, 10))], Complete: false)));

    [Fact]
    public void Of_AnyProject_AgreesWithTheCurveOfFit() =>
        Work.Projects.Sample(projects =>
        {
            foreach (SizedProject project in projects)
            {
                PartNeed? need = ProjectNeed.Of(project);
                Assert.Equal(project.Complete, need is not null);
                if (need is null) continue;
                Edges edges = ImaginedMachine.OfAnyKind.EdgesFor(project);
                Assert.Equal(edges.FitsMm, need.CubeTurnedMm);
                Assert.Equal(edges.WithCompromiseMm, need.CubeAcceptedMm, 1e-9);
                Assert.True(need.CubeTiltedAtLeastMm is null || need.CubeTiltedAtLeastMm <= need.CubeUnscaledMm);
            }
        });
}
