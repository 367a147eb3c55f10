using System.Text.Json;
using Json.Schema;
using Platewright.Formats.Toml;
using Platewright.Tests.Machines;

namespace Platewright.Tests.StudyFile;

/// <summary>The published schema of study files and the reader say the same.</summary>
public sealed class StudySchemaTests : IDisposable
{
    private const string Sound = """
        name = "Workshop"
        machines = ["generic-210-enclosed"]
        least_scale = 0.9
        allow = { cut = false }
        [work]
        of = 40
        projects_per_month = 3
        [place]
        nights = false
        exhaust = "filter"
        [[place.attended]]
        days = ["mon-fri"]
        from = "08:00"
        to = "16:00"
        [aim]
        cover_share = 0.8
        budget = { amount = 900, currency = "EUR" }
        owned = ["generic-210-enclosed"]
        [[order]]
        project = "Hood"
        copies = 24
        from = "tuesday 10:00"
        by = "fri 16:00"
        [cost]
        failure_share = 0.2
        life_years = 4
        [cost.range]
        failure_share = [0.1, 0.3]
        [defaults]
        unit = "mm"
        [[material]]
        name = "mix"
        nozzle_c = 275
        [[project]]
        name = "Hood"
        [[project.part]]
        file = "hood.stl"
        object = "shell"
        quantity = 2
        [[project.part]]
        any_of = [{ file = "a.stl" }, { dimensions_mm = [1, 2, 3] }]
        """;

    private static readonly string SchemaText =
        File.ReadAllText(Path.Combine(Repository.Root, "docs", "schema", "study.schema.json"));

    private static readonly JsonSchema Schema = JsonSchema.FromText(SchemaText);

    private readonly StudyFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void Schema_SoundStudies_AreValid()
    {
        Assert.True(IsValid(Sound));
        _folder.Read(Sound);
        string page = File.ReadAllText(Path.Combine(Repository.Root, "docs", "study-file.md"));
        Assert.All(Fenced.Toml(page), example => Assert.True(IsValid(example)));
    }

    [Theory]
    [InlineData("least_scale = 0.9", "least_scale = 9")]
    [InlineData("machines = [\"generic-210-enclosed\"]", "machines = []")]
    [InlineData("cut = false", "cut = 1")]
    [InlineData("cut = false", "slice = false")]
    [InlineData("file = \"hood.stl\"", "dimensions_mm = [1, 2, 3]")]
    [InlineData("file = \"hood.stl\"\n", "")]
    [InlineData("quantity = 2", "quantity = 0")]
    [InlineData("{ file = \"a.stl\" }, ", "")]
    [InlineData("[1, 2, 3]", "[1, 2]")]
    [InlineData("name = \"Hood\"", "")]
    [InlineData("unit = \"mm\"", "unit = 3")]
    [InlineData("name = \"mix\"", "")]
    [InlineData("of = 40", "of = 0")]
    [InlineData("projects_per_month = 3", "projects_per_month = -3")]
    [InlineData("nights = false", "nights = \"no\"")]
    [InlineData("exhaust = \"filter\"", "exhaust = \"chimney\"")]
    [InlineData("days = [\"mon-fri\"]", "days = []")]
    [InlineData("from = \"08:00\"", "from = \"eight\"")]
    [InlineData("to = \"16:00\"", "")]
    [InlineData("cover_share = 0.8", "cover_share = 1.8")]
    [InlineData("amount = 900, ", "")]
    [InlineData("copies = 24", "copies = 0")]
    [InlineData("fri 16:00", "soon")]
    [InlineData("failure_share = 0.2", "failure_share = 1")]
    [InlineData("life_years = 4", "life_years = 0")]
    [InlineData("[0.1, 0.3]", "[0.1]")]
    public void Schema_BrokenStudy_IsRefusedAsByTheReader(string right, string wrong)
    {
        string broken = Sound.Replace(right, wrong, StringComparison.Ordinal);

        Assert.NotEqual(Sound, broken);
        Assert.False(IsValid(broken));
        Assert.Throws<DescriptionException>(() => _folder.Read(broken));
    }

    [Fact]
    public void Schema_Keys_AreThoseTheReaderKnows() => Assert.Equal(
        SchemaKeys.Of(SchemaText),
        ReaderKeys.Of(
            """
            zzzz = 1
            allow = { zzzz = 1 }
            defaults = { zzzz = 1 }
            work = { zzzz = 1 }
            aim = { zzzz = 1, budget = { zzzz = 1 } }
            [place]
            zzzz = 1
            [[place.attended]]
            zzzz = 1
            [[order]]
            zzzz = 1
            [[same_money]]
            zzzz = 1
            [cost]
            zzzz = 1
            exchange = [{ zzzz = 1 }]
            range = { zzzz = 1 }
            [[material]]
            zzzz = 1
            price_per_kg = { zzzz = 1 }
            drying = { zzzz = 1 }
            [[project]]
            zzzz = 1
            allow = { zzzz = 1 }
            [[project.part]]
            zzzz = 1
            allow = { zzzz = 1 }
            any_of = [
              { file = "a.stl", zzzz = 1, allow = { zzzz = 1 } },
              { file = "b.stl" },
            ]
            """,
            text => _folder.Read(text)));

    private static bool IsValid(string toml) =>
        Schema.Evaluate(JsonSerializer.SerializeToElement(TomlJson.Read(toml, "test.toml"))).IsValid;
}
