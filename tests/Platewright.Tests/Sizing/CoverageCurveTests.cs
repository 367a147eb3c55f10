using CsCheck;
using Platewright.Machines;
using Platewright.Sizing;

namespace Platewright.Tests.Sizing;

public sealed class CoverageCurveTests
{
    [Fact]
    public void Of_SmallWorkshop_StepsWhereProjectsAreWon()
    {
        SizedProject[] projects =
        [
            Work.Project("box", Work.Part("lid", Work.Need(100, 90)), Work.Part("base", Work.Need(120, 118))),
            Work.Project("clip",
                Work.Part("long", Work.Need(200, 140), "size"), Work.Part("short", Work.Need(80, 80), "size")),
            Work.Project("rail", Work.Part("rail", Work.Need(300, 200, leastScale: 0.9))),
        ];

        var steps = CoverageCurve.Of(projects, ImaginedMachine.OfAnyKind, 0.95);

        Assert.Equal([80, 118, 120, 180, 300], steps.Select(s => s.EdgeMm));
        Assert.Equal([1, 1, 2, 2, 3], steps.Select(s => s.Fits.Count));
        Assert.Equal([1, 2, 2, 3, 3], steps.Select(s => s.WithCompromise.Count));
        Assert.All(steps, s => Assert.Equal(3, s.Fits.Of));
    }

    [Fact]
    public void Of_CanMake_LeavesOutWhatIsTooHotOrTooThin()
    {
        SizedProject[] projects =
        [
            Work.Project("cool", Work.Part("a", Work.Need(50, 50, heat: Work.Cool))),
            Work.Project("warm", Work.Part("b", Work.Need(60, 60, heat: Work.Warm))),
            Work.Project("thin", Work.Part("c", Work.Need(70, 70, wall: 0.4))),
            Work.Project("either",
                Work.Part("d", Work.Need(80, 80, heat: Work.Warm), "x"), Work.Part("e", Work.Need(90, 90), "x")),
        ];

        var cool = CoverageCurve.Of(projects, new ImaginedMachine(true, Work.Cool, Work.Bead), 0.95);
        var warm = CoverageCurve.Of(projects, new ImaginedMachine(true, Work.Warm, Work.Bead), 0.95);
        var unknown = CoverageCurve.Of(projects, new ImaginedMachine(true, null, Work.Bead), 0.95);

        Assert.Equal([50, 90], cool.Select(s => s.EdgeMm));
        Assert.Equal([50, 60, 80], warm.Select(s => s.EdgeMm));
        Assert.Equal([50, 60, 80], unknown.Select(s => s.EdgeMm));
    }

    [Fact]
    public void EdgesFor_ThinWall_LimitsHowFarItMayBeScaled()
    {
        // A wall of 0.5 mm stays one bead of 0.45 mm thick down to 90 %, so the accepted 80 % cannot be used.
        ImaginedMachine machine = new(true, null, Work.Bead);

        Assert.Equal(90, machine.EdgesFor(Work.Need(100, 100, leastScale: 0.8, wall: 0.5)).WithCompromiseMm, 1e-9);
        Assert.Equal(80, machine.EdgesFor(Work.Need(100, 100, leastScale: 0.8, wall: 5)).WithCompromiseMm, 1e-9);
        PartNeed thin = Work.Need(100, 100, leastScale: 0.8, wall: 0.1);
        Assert.Equal(80, ImaginedMachine.OfAnyKind.EdgesFor(thin).WithCompromiseMm, 1e-9);
        Assert.Equal(Edges.Never, machine.EdgesFor(thin));
    }

    [Fact]
    public void Of_AnyWork_CountsAsPartByPartAtEveryEdge() =>
        Gen.Select(Work.Projects, Work.OneOf(null, Work.Cool, Work.Warm), Gen.Bool, Gen.Int[30, 100])
            .Sample((projects, heat, canMake, edge) =>
            {
                ImaginedMachine machine = new(canMake, heat, Work.Bead);
                var steps = CoverageCurve.Of(projects, machine, 0.95);

                CoverageStep? at = steps.LastOrDefault(s => s.EdgeMm <= edge);
                int fits = projects.Count(p => Made(p, machine, edge, compromise: false));
                int withCompromise = projects.Count(p => Made(p, machine, edge, compromise: true));
                Assert.Equal((fits, withCompromise), (at?.Fits.Count ?? 0, at?.WithCompromise.Count ?? 0));
                for (int i = 1; i < steps.Length; i++)
                {
                    Assert.True(steps[i].EdgeMm > steps[i - 1].EdgeMm);
                    Assert.True(steps[i].Fits.Count >= steps[i - 1].Fits.Count);
                    Assert.True(steps[i].Fits.Count <= steps[i].WithCompromise.Count);
                }
            });

    [Fact]
    public void HeatLevels_GroupMachinesThatHeatAlike()
    {
        var levels = HeatLevel.Of(
        [
            Heated("hot", new(300, 110, 50)), Heated("plain", Work.Cool), Heated("silent", null),
            Heated("plain two", Work.Cool),
        ]);

        Assert.Equal([Work.Cool, new HeatLimits(300, 110, 50), null], levels.Select(l => l.Heat));
        Assert.Equal(["plain", "plain-two"], levels[0].Like);
        Assert.Equal(["silent"], levels[2].Like);
    }

    private static Machine Heated(string name, HeatLimits? heat) =>
        MachineArguments.Box("100,100,100") with { Name = name, HeatsTo = heat };

    /// <summary>
    /// The rule in words: every needed part, or one of its alternatives, is made on a cube of that edge.
    /// </summary>
    private static bool Made(SizedProject project, ImaginedMachine machine, double edge, bool compromise) =>
        project.Complete && project.Parts.All(part =>
            project.Parts.Any(other =>
                (other == part || (part.AnyOf is not null && other.AnyOf == part.AnyOf))
                && Made(other.Need, machine, edge, compromise)));

    private static bool Made(PartNeed need, ImaginedMachine machine, double edge, bool compromise)
    {
        double scale = 1;
        if (edge < need.CubeTurnedMm)
        {
            if (!compromise) return false;
            double least = Math.Min(need.CubeTurnedMm, need.CubeTiltedMm ?? double.MaxValue);
            scale = Math.Min(1, edge / least);
            if (scale < need.LeastScale) return false;
        }
        if (!machine.CanMake) return true;
        bool thick = need.ThinnestWallMm is not { } wall || wall * scale >= machine.BeadWidthMm;
        bool hot = need.Heat is not { } n || machine.Heat is not { } h
            || (h.NozzleC >= n.NozzleC && h.BedC >= n.BedC && h.ChamberC >= n.ChamberC);
        return thick && hot;
    }
}
