using Platewright.Formats.Toml;
using Platewright.Geometry;
using Platewright.Machines;

namespace Platewright.Tests.Machines;

/// <summary>The tables that a build estimate needs: motion, extruder, handling, heating.</summary>
public sealed class MachineTablesTests
{
    private const string Probe = """
        name = "probe"
        [build_volume]
        shape = "box"
        size_mm = [200, 200, 180]

        """;

    [Fact]
    public void Read_SmallestMachineOfTheContract_HasMotionAndNothingElse()
    {
        Machine machine = Read("[motion]\nspeed_mm_s = 150\nacceleration_mm_s2 = 3000\ncontour_tolerance_mm = 0.05");

        Assert.Equal(new MotionLimits(150, 3000, 0.05), machine.Motion);
        Assert.Null(machine.Heating);
        Assert.Null(machine.Extruder.MeltRateMm3S);
        Assert.Equal(new Extruder(), machine.Extruder);
        Assert.Equal(new Handling(), machine.Handling);
        Assert.Equal(0, machine.Handling.StartS);
        Assert.Empty(machine.Ranges);
    }

    [Fact]
    public void Read_FullMachine_GivesEveryField()
    {
        Machine machine = MachineFile.Parse(FullMachine.Text, "full.toml");

        Assert.Equal(
            new MotionLimits(150, 3000, 0.05)
            {
                JerkMmS3 = 100_000,
                AxisSpeedMmS = new Vec3(200, 150, 12),
                AxisAccelerationMmS2 = new Vec3(5000, 3000, 200),
                FirstLayerSpeedMmS = 40,
                MovingBed = true,
            },
            machine.Motion);
        Assert.Equal(
            new Extruder
            {
                NozzleBoreMm = 0.6,
                FilamentMm = 2.85,
                MeltRateMm3S = 18,
                RetractionMm = 0.8,
                RetractionSpeedMmS = 35,
                PrimeMm3 = 40,
            },
            machine.Extruder);
        Assert.Equal(new Handling { StartS = 75, MaterialChangeS = 150, PurgeMm3 = 120 }, machine.Handling);
        Heating heating = machine.Heating!;
        Assert.Equal(new Heater(350, 1.1 * 880, 0.046), heating.Bed);
        Assert.Equal(new Heater(45, 28, 0.0035), heating.Nozzle);
        Assert.Equal(new Heater(120, 400, 0), heating.Chamber);
        Assert.Equal((500, 18, 12), (heating.SupplyW, heating.ElectronicsW, heating.MotorsW));
        Assert.Equal(
            new Enclosure(330, 340, 380, 4)
            {
                WallConductivityWMK = 0.19,
                WallCapacityJM3K = 1_500_000,
                FrameCapacityJK = 5000,
                AirChangesPerHour = 2,
                CanBeVented = false,
            },
            heating.Enclosure);
        Assert.Equal(
            [
                KeyValuePair.Create("extruder.melt_rate_mm3_s", new ValueRange(14, 22)),
                KeyValuePair.Create("heating.bed.capacity_j_k", new ValueRange(800, 1200)),
                KeyValuePair.Create("motion.acceleration_mm_s2", new ValueRange(1500, 6000)),
                KeyValuePair.Create("motion.axis_speed_mm_s.y", new ValueRange(100, 180)),
            ],
            machine.Ranges);
    }

    [Fact]
    public void Read_SpeedJump_RulesCornersAndGivesTheToleranceOfARightAngle()
    {
        MotionLimits motion = Read("[motion]\nspeed_mm_s = 150\nacceleration_mm_s2 = 1000\nspeed_jump_mm_s = 10").Motion!;

        Assert.Equal(10, motion.SpeedJumpMmS);
        // At a right angle the jump of speed v is √2·v, and the corner formula v = √(a·δ·s/(1−s)), s = sin 45°, holds.
        double s = Math.Sin(Math.PI / 4);
        double speed = Math.Sqrt(1000 * motion.ContourToleranceMm * s / (1 - s));
        Assert.Equal(10 / Math.Sqrt(2), speed, 9);
    }

    [Fact]
    public void Read_HeatersWithoutDetails_TakeWhatTheDocumentationStates()
    {
        Heating heating = Read(
            "[heating]\nbed = { power_w = 200, mass_kg = 0.8 }\nnozzle = { power_w = 40 }\nchamber = { power_w = 90 }").Heating!;

        // Aluminium has 900 J/(kg·K) (handbooks, from memory); the build surface measures 0.2 m × 0.2 m.
        Assert.Equal(new Heater(200, 720, 0.04), heating.Bed);
        Assert.Equal(new Heater(40, 25, 0.004), heating.Nozzle);
        Assert.Equal(new Heater(90, 350, 0), heating.Chamber);
        Assert.Null(heating.SupplyW);
    }

    [Fact]
    public void Read_Enclosure_MakesTheMachineEnclosed()
    {
        const string Walls = "[heating.enclosure]\nsize_mm = [300, 300, 300]\nwall_mm = 3";

        Assert.True(Read(Walls).Enclosed);
        Assert.Equal(new Enclosure(300, 300, 300, 3), Read(Walls).Heating!.Enclosure);
    }

    [Theory]
    [InlineData("cylinder", "diameter_mm = 200", Math.PI * 0.01)]
    [InlineData("prism", "polygon_mm = [[0, 0], [400, 0], [0, 300]]", 0.06)]
    public void Read_BedOfOtherShapes_IsAsLargeAsTheBuildSurface(string shape, string size, double areaM2)
    {
        Machine machine = MachineFile.Parse(
            $"name = \"probe\"\n[build_volume]\nshape = \"{shape}\"\n{size}\nheight_mm = 100\n"
            + "[heating]\nbed = { power_w = 200, mass_kg = 0.8 }", "probe.toml");
        Assert.Equal(areaM2, machine.Heating!.Bed!.AreaM2, 12);
    }

    [Theory]
    [InlineData("[motion]\nspeed_mm_s = 9\nacceleration_mm_s2 = 9", "motion.contour_tolerance_mm", "missing")]
    [InlineData(
        "[motion]\nspeed_mm_s = 9\nacceleration_mm_s2 = 9\ncontour_tolerance_mm = 1\nspeed_jump_mm_s = 1",
        "motion.contour_tolerance_mm", "keep one")]
    [InlineData("[extruder]\nmelt_rate = 12", "extruder.melt_rate", "Did you mean \"melt_rate_mm3_s\"")]
    [InlineData("[handling]\nstart_s = \"1 min\"", "handling.start_s", "expected a number")]
    [InlineData("[heating.bed]\npower_w = 200", "heating.bed.capacity_j_k", "or mass_kg in its place")]
    [InlineData(
        "[heating.bed]\npower_w = 200\nmass_kg = 1\ncapacity_j_k = 900", "heating.bed.capacity_j_k", "keep one")]
    [InlineData(
        "[heating.nozzle]\npower_w = 40\nspecific_heat_j_kg_k = 900", "heating.nozzle.specific_heat_j_kg_k",
        "belongs to mass_kg")]
    [InlineData("[heating.nozzle]\ncapacity_j_k = 40", "heating.nozzle.power_w", "missing")]
    [InlineData("[heating.enclosure]\nsize_mm = [300, 300, 300]", "heating.enclosure.wall_mm", "missing")]
    [InlineData(
        "[heating.enclosure]\nsize_mm = [300, 300, 170]\nwall_mm = 3", "heating.enclosure.size_mm",
        "smaller than the build volume")]
    [InlineData("[range.extruder]\nnozzle_bore_mm = [0.5, 0.6]", "range.extruder.nozzle_bore_mm", "not between 0.5 and")]
    [InlineData("[range.extruder]\nnozzle_bore_mm = [0.5, 0.3]", "range.extruder.nozzle_bore_mm", "write [low, high]")]
    [InlineData("[range.motion]\nspeed_mm_s = [100, 200]", "range.motion.speed_mm_s", "not stated in the file")]
    [InlineData("[range.motion]\nsped_mm_s = [100, 200]", "range.motion.sped_mm_s", "Did you mean \"speed_mm_s\"")]
    [InlineData("[range.heating.bed]\npower_w = 100", "range.heating.bed.power_w", "a list of 2 numbers (low and high)")]
    public void Read_WrongTable_SaysKeyAndExpectation(string table, string key, string says)
    {
        DescriptionException refused = Assert.Throws<DescriptionException>(() => Read(table));

        DescriptionError error = Assert.Single(refused.Errors);
        Assert.Equal(key, error.Key);
        Assert.Contains(says, error.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Read_OpenMachineWithEnclosure_IsRefused()
    {
        DescriptionException refused = Assert.Throws<DescriptionException>(() => MachineFile.Parse(
            "enclosed = false\n" + Probe + "[heating.enclosure]\nsize_mm = [300, 300, 300]\nwall_mm = 3", "probe.toml"));
        Assert.Equal("enclosed", Assert.Single(refused.Errors).Key);
    }

    [Fact]
    public void Parameters_OfAFullMachine_ReadAndWriteEachItsOwnNumber()
    {
        Machine full = MachineFile.Parse(
            FullMachine.Text.Replace("contour_tolerance_mm = 0.05", "speed_jump_mm_s = 8", StringComparison.Ordinal), "full.toml");
        Machine[] machines = [full, MachineFile.Parse(FullMachine.Text, "full.toml")];

        foreach (MachineParameter parameter in MachineParameters.All)
        {
            Machine machine = machines.First(m => parameter.Of(m) is not null);
            double changed = parameter.Of(machine)!.Value * 1.25;
            Machine other = parameter.With(machine, changed);
            Assert.Equal(changed, parameter.Of(other));
            Assert.All(
                MachineParameters.All.Where(p => p != parameter), p => Assert.Equal(p.Of(machine), p.Of(other)));
        }
    }

    private static Machine Read(string tables) => MachineFile.Parse(Probe + tables, "probe.toml");
}
