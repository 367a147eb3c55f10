using System.Text.Json;
using System.Text.Json.Nodes;
using Platewright.Fit;
using Platewright.Fit.Proofs;
using Platewright.Study.Documents;
using Platewright.Verify;

namespace Platewright.Tests.Fit;

/// <summary>Written proofs, checked by the separate checker: accepted as they are, refused when tampered with.</summary>
public sealed class ProofTests
{
    public static TheoryData<string> FreeIds()
    {
        var ids = new TheoryData<string>();
        foreach (ReferenceCase c in ReferenceCase.All().Where(c => c.Mode == "free")) ids.Add(c.Id);
        if (ids.Count == 0) ids.Add("absent");
        return ids;
    }

    [Theory]
    [MemberData(nameof(FreeIds))]
    public void Check_ReferenceCase_AcceptsAndBracketsTheReference(string id)
    {
        Repository.SharedOrSkip("reference", "fit-cases.json");
        ReferenceCase c = ReferenceCase.All().Single(x => x.Id == id);
        ProofResult result = Verify(ProofJson(c));
        Assert.Null(result.Refused);
        Assert.True(result.UpperScale >= c.MaxScale * (1 - 1e-9));
        Assert.True(result.LowerScale <= c.MaxScale * (1 + c.Excess + 1e-9));
        Assert.True(result.UpperScale / result.LowerScale <= 1 + 1.01e-4);
    }

    public static TheoryData<string, Action<JsonNode>> Tamperings() => new()
    {
        { "a smaller bound", p => p["upper_scale"] = p["upper_scale"]!.GetValue<double>() * 0.9998 },
        { "a larger lower scale", p => p["lower_scale"] = p["lower_scale"]!.GetValue<double>() * 1.0002 },
        { "a witness elsewhere", p => p["witness"]!["translation_mm"]![0] = p["witness"]!["translation_mm"]![0]!.GetValue<double>() + 1 },
        { "a larger vertex", p => p["vertices_mm"]![0]![0] = p["vertices_mm"]![0]![0]!.GetValue<double>() * 1.01 },
        { "a cell called outside", p => p["bound"]!["cells"] = Replaced(p["bound"]!["cells"]!.GetValue<string>()) },
        { "a missing cell", p => p["bound"]!["cells"] = p["bound"]!["cells"]!.GetValue<string>()[..^1] },
        { "a missing chart", p => p["bound"]!["charts"] = new JsonArray() },
        { "an unjustified cut", p => p["bound"]!["cut"] = p["bound"]!["cut"]!.GetValue<string>() == "cube" ? "disc" : "cube" },
        { "a vertex out of range", p => p["bound"]!["closings"]![0]![0]!["vertices"]![0] = 100000 },
        { "a negative weight", p => p["bound"]!["closings"]![0]![0]!["weight"] = -1 },
        { "less shrinkage", p => p["shrinkage"] = -0.1 },
    };

    [Theory]
    [MemberData(nameof(Tamperings), DisableDiscoveryEnumeration = true)]
    public void Check_TamperedProof_Refuses(string what, Action<JsonNode> tamper)
    {
        foreach (ReferenceCase c in new[] { Solids.IcosahedronInBox(), Solids.BoxInSquareBed(), Solids.TetrahedronInCylinder() })
        {
            JsonNode proofs = JsonNode.Parse(ProofJson(c))!;
            Assert.Null(Verify(proofs.ToJsonString()).Refused);
            tamper(proofs["proofs"]![0]!);
            Assert.True(Verify(proofs.ToJsonString()).Refused is not null, $"{c.Id}: {what} was accepted.");
        }
    }

    [Theory]
    [InlineData("")]
    [InlineData("{}")]
    [InlineData("{\"format\":1}")]
    [InlineData("{\"format\":2,\"proofs\":[]}")]
    [InlineData("{\"format\":1,\"proofs\":5}")]
    public void Check_NotAProofFile_SaysSo(string text)
    {
        ProofException error = Assert.Throws<ProofException>(() => ProofChecker.Check(new MemoryStream(System.Text.Encoding.UTF8.GetBytes(text))));
        Assert.NotEmpty(error.Message);
    }

    private static string Replaced(string cells)
    {
        int at = cells.IndexOf('c', StringComparison.Ordinal);
        return string.Concat(cells.AsSpan(0, at), "o", cells.AsSpan(at + 1));
    }

    private static string ProofJson(ReferenceCase c)
    {
        FitProof proof = FitProver.Prove(c.Part(), c.Machine, new FitOptions(), CancellationToken.None);
        return JsonSerializer.Serialize(new ProofsDocument([ProofDocument.Of("case", null, c.Id, proof)]), DocumentJson.Compact);
    }

    private static ProofResult Verify(string json) =>
        Assert.Single(ProofChecker.Check(new MemoryStream(System.Text.Encoding.UTF8.GetBytes(json))));
}
