using System.Globalization;
using Platewright.Build.Heat;
using Platewright.Machines;

namespace Platewright.Tests.Machines;

/// <summary>A machine from what a person knows: stated values stay, the rest is typical and carries its range.</summary>
public sealed class MachineFillerTests
{
    private static readonly KnownMachine Box = new("bench", new BoxVolume(220, 220, 250));

    [Fact]
    public void BedHeating_ReferenceBed_TakesItsTime()
    {
        // Lumped warm-up worked by hand: 900 J/K, 250 W, 1.8 W/K, 22 → 100 °C takes 412.3 s; with 120 W it stalls at 88.7 °C.
        const double area = 1.8 / BedHeating.LossWM2K;
        Assert.Equal(412.3, BedHeating.SecondsTo(250, 900, area, 100), 1);
        Assert.Equal(double.PositiveInfinity, BedHeating.SecondsTo(120, 900, area, 100));
        Assert.True(double.IsFinite(BedHeating.SecondsTo(120, 900, area, 88.6)));
        Assert.Equal(900, BedHeating.CapacityFor(250, area, 100, 412.3), 0);
        Assert.Equal(250, BedHeating.PowerFor(900, area, 100, 412.3), 1);
        Assert.Equal(0, BedHeating.CapacityFor(120, area, 100, 412.3));
    }

    [Theory]
    [InlineData(3, 60)]
    [InlineData(6, 100)]
    public void Fill_MinutesToTemperature_AreMetByTheHeatModel(double minutes, double toC)
    {
        FilledMachine filled = MachineFiller.Fill(Box with { Closed = false, SupplyW = 360, BedWarmUp = new(minutes, toC) });

        // The network with handbook correlations against the lump with one coefficient: within a tenth.
        Material material = new("probe", new(190, toC, 0), 0, 0, "test") { UsualC = new(190, toC, 0) };
        WarmUp warmUp = new MachineHeat(filled.Machine, material, BedHeating.RoomC).WarmUp!;
        Assert.InRange(warmUp.BedS!.Value / (minutes * 60), 0.9, 1.1);
        Assert.Contains("min to", filled.Origins["heating.bed.capacity_j_k"], StringComparison.Ordinal);
        Assert.Empty(filled.Notes);
    }

    [Fact]
    public void Fill_EveryNumber_IsStatedOrHasARangeAndAnOrigin()
    {
        FilledMachine filled = MachineFiller.Fill(Box with { Closed = true });
        string[] usual = ["extruder.nozzle_bore_mm", "extruder.filament_mm"];

        foreach (MachineParameter parameter in MachineParameters.All)
        {
            if (parameter.Of(filled.Machine) is not { } value) continue;
            Assert.True(filled.Origins.ContainsKey(parameter.Key), parameter.Key);
            Assert.True(parameter.Allowed.Contains(value), parameter.Key);
            if (usual.Contains(parameter.Key)) continue;
            ValueRange range = parameter.RangeOf(filled.Machine)!.Value;
            Assert.True(range.Low <= value && value <= range.High, parameter.Key);
        }
        Assert.False(filled.Machine.Motion!.MovingBed);
        Assert.NotNull(filled.Machine.Heating!.Enclosure);
        Assert.Null(filled.Machine.Heating.SupplyW);
    }

    [Fact]
    public void Fill_StatedBedHeater_IsTakenWithoutDoubt()
    {
        FilledMachine filled = MachineFiller.Fill(Box with { BedHeaterW = 275 });

        Assert.Equal(275, filled.Machine.Heating!.Bed!.PowerW);
        Assert.DoesNotContain("heating.bed.power_w", filled.Machine.Ranges.Keys);
        Assert.Equal("stated", filled.Origins["heating.bed.power_w"]);
    }

    [Fact]
    public void Fill_SlowBed_LowersThePowerWithinItsRangeRatherThanInventAHeavyBed()
    {
        Heater bed = MachineFiller.Fill(Box with { BedWarmUp = new(5, 60) }).Machine.Heating!.Bed!;

        Assert.InRange(bed.CapacityJK / bed.AreaM2, 10_000, 32_500);
        Assert.InRange(BedHeating.SecondsTo(bed.PowerW, bed.CapacityJK, bed.AreaM2, 60), 290, 310);
    }

    [Theory]
    [InlineData(60, 4, 90, "never bring a bed of this size to 90 °C")]
    [InlineData(400, 30, 60, "outside what is usual")]
    [InlineData(300, 0.2, 100, "outside what is usual")]
    public void Fill_WattsAndMinutesThatDoNotMatch_AreTold(double watts, double minutes, double toC, string says)
    {
        FilledMachine filled = MachineFiller.Fill(Box with { BedHeaterW = watts, BedWarmUp = new(minutes, toC) });

        Assert.Contains(says, Assert.Single(filled.Notes), StringComparison.Ordinal);
        Assert.Equal(watts, filled.Machine.Heating!.Bed!.PowerW);
    }

    [Fact]
    public void Fill_UnheatedBed_HasNone() =>
        Assert.Null(MachineFiller.Fill(Box with { HeatedBed = false, Closed = false }).Machine.Heating!.Bed);

    [Fact]
    public void Typical_EveryParameter_HasAValueWithinItsRangeForEveryClass()
    {
        foreach (MachineParameter parameter in MachineParameters.All)
        {
            foreach (bool? closed in (bool?[])[true, false, null])
            {
                foreach (bool round in (bool[])[true, false])
                {
                    TypicalValue typical = parameter.TypicalOf(new MachineClass(closed, round, 0.048));
                    Assert.True(typical.Range.Low <= typical.Value && typical.Value <= typical.Range.High, parameter.Key);
                    Assert.True(parameter.Allowed.Contains(typical.Range.Low), parameter.Key);
                    Assert.True(parameter.Allowed.Contains(typical.Range.High), parameter.Key);
                    Assert.NotEmpty(typical.Source);
                }
            }
        }
    }

    [Theory]
    [InlineData(0, 0)]
    [InlineData(0.0123456, 0.0123)]
    [InlineData(1234567, 1230000)]
    [InlineData(-19.96, -20)]
    public void Significant_KeepsThreeDigits(double value, double rounded) => Assert.Equal(
        rounded.ToString(CultureInfo.InvariantCulture),
        Significant.Round(value, 3).ToString(CultureInfo.InvariantCulture));
}
