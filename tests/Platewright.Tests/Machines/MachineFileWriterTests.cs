using Platewright.Machines;

namespace Platewright.Tests.Machines;

/// <summary>What is written reads back as the same machine.</summary>
public sealed class MachineFileWriterTests
{
    public static TheoryData<string> Bundled() => [.. MachineCatalog.Bundled.Select(m => m.Id)];

    [Theory]
    [MemberData(nameof(Bundled))]
    public void Write_BundledMachine_ReadsBack(string id) => ReadsBack(MachineCatalog.Find(id) with { Generic = false });

    [Theory]
    [InlineData("left_mm = 5", "left_mm = 5")]
    [InlineData("contour_tolerance_mm = 0.05", "speed_jump_mm_s = 8")]
    [InlineData("note = \"second hand\"", "note = \"a \\\"quoted\\\" \\\\ back\\u0009tab ä\"")]
    [InlineData("acceleration_mm_s2 = [1500, 6000]", "acceleration_mm_s2 = [0.00001, 6000]")]
    public void Write_FullMachine_ReadsBack(string right, string other) =>
        ReadsBack(MachineFile.Parse(FullMachine.Text.Replace(right, other, StringComparison.Ordinal), "full.toml"));

    [Fact]
    public void Write_Prism_ReadsBack() => ReadsBack(MachineFile.Parse(
        "name = \"p\"\n[build_volume]\nshape = \"prism\"\npolygon_mm = [[0, 0], [100, 0], [50, 80.5]]\nheight_mm = 180\n"
        + "[margins]\nside_mm = 3\n", "prism.toml"));

    [Fact]
    public void Write_Comments_StandBesideTheirKeys()
    {
        string text = MachineFileWriter.Write(
            MachineCatalog.Bundled[0], key => key == "heating.bed.power_w" ? "from its label" : null, "first line");
        Assert.StartsWith("# first line\n", text, StringComparison.Ordinal);
        Assert.Contains("power_w = 60                             # from its label\n", text, StringComparison.Ordinal);
    }

    private static void ReadsBack(Machine machine)
    {
        Machine again = MachineFile.Parse(MachineFileWriter.Write(machine), "written.toml");
        Assert.Equal(machine.Ranges, again.Ranges);
        Assert.Equal(machine.KeepOuts, again.KeepOuts);
        Assert.Equal(machine, again with { Ranges = machine.Ranges, KeepOuts = machine.KeepOuts });
    }
}
