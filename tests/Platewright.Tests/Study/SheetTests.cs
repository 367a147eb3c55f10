using System.Text.Json;
using Platewright.Study.Deciding.Sheet;
using Platewright.Study.Documents;
using Platewright.Study.Output;
using Platewright.Tests.Report;

namespace Platewright.Tests.Study;

/// <summary>Every sentence of the decision sheet comes from study.json, for every kind of answer.</summary>
public static class SheetTests
{
    private const int MostSentences = 28;

    private static SizingDocument Sizing => FixtureStudy.WithoutModels.Sizing!;

    private static MixDocument Mix => Sizing.Mix!;

    private static Dictionary<string, SizingDocument> Answers => new(StringComparer.Ordinal)
    {
        ["within"] = Sizing,
        ["within, too little to notice"] = Sizing with { Mix = Mix with { Within = 0.0001 } },
        ["optimal"] = Sizing with { Mix = Mix with { Status = "optimal", Within = 0, Blocking = [] } },
        ["budget in the way"] = Sizing with { Mix = Mix with { Status = "unreachable", Aimed = 0.9, Blocking = ["budget"] } },
        ["budget or floor in the way"] = Sizing with { Mix = Mix with { Status = "unreachable", Blocking = ["budget", "floor", "counts"] } },
        ["no machine is enough"] = Sizing with { Mix = Mix with { Status = "unreachable", Blocking = [] } },
        ["undecided"] = Sizing with { Mix = Mix with { Status = "undecided" } },
        ["no room"] = Sizing with { Mix = Mix with { Status = "no_room", Machines = [], Blocking = ["power"] } },
        ["nothing can be bought"] = Sizing with { Mix = Mix with { Status = "unreachable", Machines = [], Blocking = ["machines"] } },
        ["no money"] = Sizing with { Mix = null, Front = [], Sensitivity = [], SameMoney = [] },
        ["no money, aim too high"] = Sizing with { Mix = null, Front = [], Sensitivity = [], Aim = Sizing.Aim with { CoverShare = 1 } },
        ["nothing owned"] = Sizing with { Mix = Mix with { Machines = [.. Mix.Machines.Select(m => m with { Owned = 0 })] } },
        ["all owned"] = Sizing with { Mix = Mix with { Machines = [.. Mix.Machines.Select(m => m with { Owned = m.Count })], Price = 0 } },
        ["some owned"] = Sizing with { Mix = Mix with { Machines = [Mix.Machines[0] with { Count = 3 }] } },
        ["late"] = Sizing with { Orders = [.. Sizing.Orders.Select(o => o with { On = [.. o.On.Select(on => on with { CanMake = true, InTime = false })] })] },
        ["in time"] = Sizing with { Orders = [.. Sizing.Orders.Select(o => o with { On = [.. o.On.Select(on => on with { CanMake = true, InTime = true })] })] },
        ["all of the work"] = Sizing with { Workload = Sizing.Workload with { Sample = false, Population = null, Wanted = 0, RatesAssumed = true } },
        ["no interval known"] = Sizing with { Larger = [], Front = [], Orders = [], SameMoney = [], Place = null },
        ["told apart"] = Sizing with { Larger = [.. Sizing.Larger.Select(l => l with { ToldApart = true, MoreProjects = null })] },
        ["nothing left undone"] = Sizing with { Mix = Mix with { NotMade = [], Excluded = [] } },
        ["steady"] = Sizing with { Sensitivity = [.. Sizing.Sensitivity.Select(s => s with { Changes = false })] },
    };

    public static TheoryData<string> Kinds => [.. Answers.Keys];

    [Theory]
    [MemberData(nameof(Kinds))]
    public static void Sheet_EverySentence_IsRebuiltFromTheFile(string kind)
    {
        using JsonDocument file = Written(kind);
        foreach (JsonElement sentence in Sentences(file.RootElement))
            Assert.Equal(SheetRebuild.Sentence(file.RootElement, sentence), sentence.GetProperty("text").GetString());
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public static void Sheet_Patterns_HoldNoNumberOfTheirOwn(string kind)
    {
        using JsonDocument file = Written(kind);
        foreach (JsonElement sentence in Sentences(file.RootElement))
        {
            string pattern = sentence.GetProperty("pattern").GetString()!;
            Assert.DoesNotContain(SheetRebuild.Words(pattern), char.IsDigit);
            string text = sentence.GetProperty("text").GetString()!;
            Assert.DoesNotContain("NaN", text, StringComparison.Ordinal);
            Assert.DoesNotContain("∞", text, StringComparison.Ordinal);
            Assert.DoesNotContain("{", text, StringComparison.Ordinal);
            Assert.DoesNotContain("..", text, StringComparison.Ordinal);
        }
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public static void Sheet_Always_HasThreeReasonsAndFitsAPage(string kind)
    {
        SheetDocument sheet = Sheet(kind);
        Assert.Equal(3, sheet.Reasons.Count);
        Assert.Equal(3, sheet.Reasons.Select(r => r.Text).Distinct(StringComparer.Ordinal).Count());
        Assert.All(
            [sheet.Recommendation, sheet.NotPossible, sheet.Doubt, sheet.Cautions], part => Assert.NotEmpty(part));
        Assert.InRange(All(sheet).Count(), 10, MostSentences);
    }

    [Fact]
    public static void Sheet_WhereMachinesAreNotToldApart_RanksNeither()
    {
        SizingDocument tied = Sizing with { Larger = [.. Sizing.Larger.Select(l => l with { ToldApart = false, MoreProjects = 40 })] };
        SheetDocument sheet = DecisionSheet.Of(FixtureStudy.WithoutModels with { Sizing = tied });
        Assert.Contains(sheet.Doubt, s => s.Text.Contains("cannot be told apart on this sample; about 40 more projects would", StringComparison.Ordinal));
        Assert.DoesNotContain(All(sheet), s => s.Text.Contains("One size", StringComparison.Ordinal));
        Assert.DoesNotContain(All(sheet), s => s.Text.Contains("better", StringComparison.OrdinalIgnoreCase));
    }

    [Fact]
    public static void Sheet_WhereTheBudgetIsInTheWay_SaysSo() => Assert.Equal(
        "The aim of 90 % of the work cannot be reached because of the budget of 2,500 EUR; this is the best within it.",
        Sheet("budget in the way").Recommendation[0].Text);

    [Fact]
    public static void Sheet_WithSomethingOwned_KeepsIt() => Assert.Equal(
        "Buy 1 × Closed 330 for 2,950 EUR, tax included, and keep 1 × Open 210.", Sheet("optimal").Recommendation[0].Text);

    [Fact]
    public static void Sheet_WorkThatTheMachinesCouldMake_IsNotCalledImpossible()
    {
        StudyDocument study = FixtureStudy.WithoutModels;
        int[] bought = [.. Mix.Machines.Select(m => study.Machines.ToList().FindIndex(s => s.Id == m.Machine))];
        string makeable = study.Projects.First(p => bought.Any(m => p.Verdicts[m].CanMake)).Name;
        string beyond = study.Projects.First(p => bought.All(m => !p.Verdicts[m].CanMake)).Name;
        MixDocument leftOut = Mix with { Status = "optimal", NotMade = [makeable, beyond] };
        SheetDocument sheet = DecisionSheet.Of(study with { Sizing = Sizing with { Mix = leftOut } });
        Assert.Equal($"Not made: {beyond}.", sheet.NotPossible[0].Text);
        Assert.Equal($"Not counted on, since the aim is reached without: {makeable}.", sheet.NotPossible[1].Text);
    }

    [Fact]
    public static void Sheet_WithoutSizing_IsRefused() =>
        Assert.Throws<ArgumentException>(() => DecisionSheet.Of(FixtureStudy.WithoutBuilds));

    private static SheetDocument Sheet(string kind) =>
        DecisionSheet.Of(FixtureStudy.WithoutModels with { Sizing = Answers[kind] });

    private static JsonDocument Written(string kind)
    {
        StudyDocument study = FixtureStudy.WithoutModels with { Sizing = Answers[kind] };
        study = study with { Sizing = study.Sizing with { Sheet = DecisionSheet.Of(study) } };
        using MemoryStream file = new();
        StudyJson.Write(study, file);
        return JsonDocument.Parse(file.ToArray());
    }

    private static IEnumerable<SentenceDocument> All(SheetDocument s) =>
        [.. s.Recommendation, .. s.Reasons, .. s.NotPossible, .. s.Doubt, .. s.Alternatives, .. s.Assumptions, .. s.Cautions];

    private static IEnumerable<JsonElement> Sentences(JsonElement study) => study.GetProperty("sizing").GetProperty("sheet")
        .EnumerateObject().Where(p => p.Value.ValueKind == JsonValueKind.Array).SelectMany(p => p.Value.EnumerateArray());
}
