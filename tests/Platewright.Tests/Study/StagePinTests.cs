using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;
using Platewright.Fit;
using Platewright.Formats.Toml;
using Platewright.Machines;
using Platewright.Sizing.Answers;
using Platewright.Sizing.Cases;
using Platewright.Study;
using Platewright.Study.Deciding;
using Platewright.Study.Documents;
using Platewright.Study.Examining;
using Platewright.Study.Store;
using Platewright.Tests.Sizing.Answers;

namespace Platewright.Tests.Study;

/// <summary>
/// The output of each stage for fixed inputs, as a hash for each version of the stage. A stage that computes something else under
/// an old version would be served old answers from people's stores: raise its version in <c>Stage.cs</c>, then pin the new hash.
/// </summary>
public sealed class StagePinTests : IDisposable
{
    // Processors and libraries differ in the last digits of a number.
    private const string SixDigits = "G6";

    private static readonly Dictionary<string, string> Pinned = new(StringComparer.Ordinal)
    {
        ["examine 6"] = "70e9fb7e4f9a6a5d",
        ["fit 6"] = "33cf24acc546c75e",
        ["need 5"] = "a3b6108cbf6f629e",
        ["size 3"] = "3ee942a5d33d86b7",
        ["size 4"] = "0997747e60e3e9fb",
    };

    private readonly ScratchFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void Examine_OfFixedFile_IsPinned()
    {
        TestModels.WriteBox(_folder["box.stl"], 40, 30, 20);
        Examination found = Examiner.Examine(
            _folder["box.stl"], ExamineOptions.Default with { ForStudy = true }, CancellationToken.None);
        Check(Stage.Examine, JsonSerializer.Serialize(found, StoredJson.Default.Examination));
    }

    [Fact]
    public void Fit_OfFixedPart_IsPinned()
    {
        Machine machine = MachineArguments.WithMargin(MachineArguments.Box("110,100,90"), 2);
        FitResult fit = FitSolver.Solve(Lump(), machine, new Allowance(), new FitOptions(), CancellationToken.None);
        Check(Stage.Fit, JsonSerializer.Serialize(fit, StoredJson.Default.FitResult));
    }

    [Fact]
    public void Need_OfFixedPart_IsPinned()
    {
        SizeNeed need = SizeNeedSolver.Solve(Lump(), new FitOptions(), CancellationToken.None);
        Check(Stage.Need, JsonSerializer.Serialize(need, StoredJson.Default.SizeNeed));
    }

    [Fact]
    public void Size_OfFixedCase_IsPinned()
    {
        SizingCase c = Cases.Of(
            [Cases.Machine("small", 100, 300), Cases.Machine("large", 300, 1500)],
            Cases.Project(0, 4, 2, 1.5), Cases.Project(1, 2, 5, 3), Cases.Project(2, 1, null, 7)) with
        { Orders = [new Order(0, 9, 30_000, 300_000)] };
        SizingPlan plan = SizingPlan.Unsaid with { Orders = [new OrderPlan("project 0", 9, 30_000, 300_000, new TomlPlace("f", 1, "k"))] };
        SizingDocument found = new SizingDescription(SizingAnswer.Of(c, TestContext.Current.CancellationToken), plan, new Dictionary<string, string>
        {
            ["p0-1"] = "a",
            ["p1-1"] = "b",
            ["p2-1"] = "c",
        }).Describe([("small", 2), ("large", 3)]);
        Check(Stage.Size, JsonSerializer.Serialize(found, StoredJson.Default.SizingDocument));
    }

    private PreparedPart Lump()
    {
        TestModels.WriteLump(_folder["lump.stl"], seed: 1);
        ExaminedPart part = Examiner.Examine(_folder["lump.stl"], ExamineOptions.Default, CancellationToken.None).Parts[0];
        return new PreparedPart(new PartShape(part.ToHull(), Shrinkage: 0.005, BrimMm: 3));
    }

    private static void Check(Stage stage, string json)
    {
        string steady = Steady(JsonNode.Parse(json))!.ToJsonString();
        string hash = Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(steady)))[..16];
        string version = $"{stage.Name} {stage.Version}";
        Assert.True(Pinned.TryGetValue(version, out string? pinned), $"No hash is pinned for {version}; it is {hash}.");
        Assert.True(pinned == hash,
            $"The stage {stage.Name} computes something else than it did as version {stage.Version} ({hash}, pinned {pinned}): " +
            "raise its version in Stage.cs and pin the new hash.");
    }

    private static JsonNode? Steady(JsonNode? node) => node switch
    {
        JsonObject o => new JsonObject(o.Select(p => KeyValuePair.Create(p.Key, Steady(p.Value)))),
        JsonArray a => new JsonArray([.. a.Select(Steady)]),
        JsonValue v when v.GetValueKind() == JsonValueKind.Number =>
            JsonValue.Create(v.GetValue<double>().ToString(SixDigits, CultureInfo.InvariantCulture)),
        _ => node?.DeepClone(),
    };
}
