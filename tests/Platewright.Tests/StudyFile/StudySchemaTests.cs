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
        Schema.Evaluate(JsonSerializer.SerializeToElement(TomlAsJson.Convert(toml))).IsValid;
}
