using Platewright.Formats.Toml;
using Platewright.Study.Learning;
using Platewright.Tests.Study;

namespace Platewright.Tests.Learning;

/// <summary>The log of past jobs: what it may hold, and what is said when it does not.</summary>
public sealed class JobLogTests : IDisposable
{
    private readonly ScratchFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void Read_OfGoodLog_GivesItsJobs()
    {
        IReadOnlyList<PastJob> jobs = JobLog.Read(Write(
            "file,machine,recipe,measured_time,energy_kwh\n\"a, b.stl\",generic-165-open,use,3:05,0.4\nc.gcode,generic-165-open,,0:40:30,\n"));
        Assert.Equal(new PastJob(2, "a, b.stl", null, "generic-165-open", "use", null, 11_100, 0.4), jobs[0]);
        Assert.Equal(2430, jobs[1].MeasuredS);
        Assert.Null(jobs[1].EnergyKwh);
    }

    [Fact]
    public void Read_OfBlankLog_SaysThatItHoldsNoJobs() => Refused(JobLog.Blank, "holds no jobs");

    [Theory]
    [InlineData("file,machin,measured_time\n", "there is no column \"machin\"")]
    [InlineData("file,machine\na.stl,m\n", "measured_time: the column is missing")]
    [InlineData("file,machine,measured_time\na.stl,m,90\n", "line 2, measured_time: expected h:mm or h:mm:ss")]
    [InlineData("file,machine,measured_time\na.stl,m,1:75\n", "expected h:mm or h:mm:ss")]
    [InlineData("file,machine,measured_time\na.stl,,1:15\n", "line 2, machine: it is empty")]
    [InlineData("file,machine,measured_time,energy_kwh\na.stl,m,1:15,-2\n", "energy_kwh: expected a number of kWh above 0")]
    [InlineData("", "no header")]
    public void Read_OfBadLog_NamesLineAndColumn(string text, string says) => Refused(text, says);

    private void Refused(string text, string says)
    {
        DescriptionException e = Assert.Throws<DescriptionException>(() => JobLog.Read(Write(text)));
        Assert.Contains(says, e.Message, StringComparison.Ordinal);
    }

    private string Write(string text)
    {
        string path = _folder["log.csv"];
        File.WriteAllText(path, text);
        return path;
    }
}
