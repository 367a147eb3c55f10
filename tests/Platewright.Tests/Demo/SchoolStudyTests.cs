using System.Text.Json;
using Platewright.Study;
using Platewright.Study.Pipeline;
using Platewright.Tests.Cli;
using Platewright.Tests.Study;

namespace Platewright.Tests.Demo;

/// <summary>The school's study is read as it is meant, and its work is of the kind it was invented for.</summary>
public sealed class SchoolStudyTests : IDisposable
{
    /// <summary>At which only machines with a filter or a duct may work.</summary>
    private static readonly string[] NeedFilter = ["Door stop", "Drying line"];

    private static readonly string StudyPath = Path.Combine(Repository.Root, "demo", "school", "study.toml");

    private readonly ScratchFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void Study_IsReadAsWritten()
    {
        StudySource source = StudySource.Open(StudyPath, TestContext.Current.CancellationToken);
        Assert.Empty(source.Unusable);
        StudyPlan plan = source.Plan;
        Assert.All(plan.Projects, p =>
            Assert.True(p.Frequency.PerMonth > 0 ^ p.Frequency.PrintedPartsOf is not null, p.Name));
        Assert.Equal("Valley relief", Assert.Single(plan.Projects, p => p.Wanted).Name);
        OrderPlan order = Assert.Single(plan.Sizing.Orders);
        Assert.Equal(("Name stand", 24), (order.Project, order.Copies));
        // From Monday 08:00 to the Friday after, 13:00.
        Assert.Equal((4 * 24 + 5) * 3600.0, order.ByS - order.FromS);
        Assert.Single(plan.Sizing.SameMoney);
    }

    [Fact]
    public void Projects_AreMadeBySomeMachine_AndTheAirRuleDecidesTwo()
    {
        CommandResult result = BuiltCommand.Run(
            "study", StudyPath, "--no-estimates", "--no-models", "--store", _folder["store"], "--out", _folder["out"]);
        Assert.Equal(0, result.ExitCode);
        using JsonDocument study = JsonDocument.Parse(File.ReadAllText(_folder["out", "study.json"]));
        JsonElement[] projects = [.. study.RootElement.GetProperty("projects").EnumerateArray()];
        // The printed parts of a machine are in no share.
        int work = projects.Count(p => p.GetProperty("printed_parts_of").ValueKind == JsonValueKind.Null);
        Assert.Equal(projects.Length - 1, work);
        Assert.All(study.RootElement.GetProperty("machines").EnumerateArray(), m =>
            Assert.Equal(work, m.GetProperty("coverage").GetProperty("projects").GetInt32()));
        foreach (JsonElement project in projects)
        {
            string name = project.GetProperty("name").GetString()!;
            string[] makers = [.. project.GetProperty("verdicts").EnumerateArray()
                .Where(v => v.GetProperty("can_make").GetBoolean()).Select(v => v.GetProperty("machine").GetString()!)];
            Assert.True(makers.Length > 0, $"no machine makes {name}");
            // The bundled machines with a filter or a duct are the enclosed ones.
            if (NeedFilter.Contains(name))
                Assert.All(makers, m => Assert.EndsWith("-enclosed", m, StringComparison.Ordinal));
            if (name == "Valley relief") Assert.Equal(["generic-440-enclosed"], makers);
        }
    }
}
