using System.Globalization;
using Platewright.Cli.Commands;
using Platewright.Study.Interview;
using Spectre.Console;

namespace Platewright.Tests.Cli;

/// <summary>Questions on a terminal: skipped by an empty line, asked again after a wrong one.</summary>
public sealed class QuestionsTests
{
    [Fact]
    public void Ask_WrongThenRight_SaysWhatWasExpectedAndTakesTheSecond()
    {
        (Questions questions, StringWriter shown) = Of("wide\n210, 200, 190\n");

        Assert.Equal(new Platewright.Machines.BoxVolume(210, 200, 190), questions.Ask("How large?", MachineAnswers.Size));
        Assert.Contains("expected three numbers of mm", shown.ToString(), StringComparison.Ordinal);
        Assert.Equal(2, shown.ToString().Split("How large?").Length - 1);
    }

    [Fact]
    public void Ask_EmptyLineOrEnd_Skips()
    {
        (Questions questions, _) = Of("\n");
        Assert.Null(questions.Ask("First?", t => t));
        Assert.Null(questions.Ask("Second?", t => t));
    }

    [Fact]
    public void Ask_Interrupted_Stops()
    {
        Questions questions = new(AnsiConsole.Create(new AnsiConsoleSettings { Out = new AnsiConsoleOutput(new StringWriter()) }),
            new StringReader("x"), new CancellationToken(canceled: true));
        Assert.ThrowsAny<OperationCanceledException>(() => questions.Ask("Any?", t => t));
    }

    [Theory]
    [InlineData("350", 350, false)]
    [InlineData("bed 250", 250, true)]
    [InlineData("Bed,250", 250, true)]
    public void Power_OfSupplyOrBed(string text, double watts, bool ofBed) => Assert.Equal((watts, ofBed), MachineAnswers.Power(text));

    [Theory]
    [InlineData("4", 4, 60)]
    [InlineData("4.5 to 80", 4.5, 80)]
    public void WarmUp_MinutesAndTemperature(string text, double minutes, double toC) =>
        Assert.Equal(new Platewright.Machines.BedWarmUp(minutes, toC), MachineAnswers.WarmUp(text));

    [Fact]
    public void WarmUp_None_IsABedThatIsNotHeated() => Assert.Null(MachineAnswers.WarmUp("none"));

    [Theory]
    [InlineData("2:35", 9300)]
    [InlineData(" 0:05:30", 330)]
    [InlineData("155 min", 9300)]
    [InlineData("2.5h", 9000)]
    [InlineData("90 minutes", 5400)]
    [InlineData("155", null)]
    [InlineData("2:75", null)]
    [InlineData("0:00", null)]
    [InlineData("-5 min", null)]
    [InlineData("min", null)]
    public void SpokenTime_IsReadOrNot(string text, int? seconds) => Assert.Equal(seconds, SpokenTime.Seconds(text));

    private static (Questions Questions, StringWriter Shown) Of(string typed)
    {
        StringWriter shown = new(CultureInfo.InvariantCulture);
        IAnsiConsole console = AnsiConsole.Create(new AnsiConsoleSettings
        {
            Out = new AnsiConsoleOutput(shown),
            Ansi = AnsiSupport.No,
            ColorSystem = ColorSystemSupport.NoColors,
        });
        return (new Questions(console, new StringReader(typed), CancellationToken.None), shown);
    }
}
