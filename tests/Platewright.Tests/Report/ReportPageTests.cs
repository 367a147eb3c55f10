using System.Buffers.Binary;
using System.Text.Json;
using Platewright.Report;
using Platewright.Study.Documents;

namespace Platewright.Tests.Report;

public sealed class ReportPageTests
{
    [Fact]
    public void Render_NamesWithMarkup_StayInsideTheirElement()
    {
        string page = ReportPage.Render(FixtureStudy.WithModels);

        using JsonDocument json = JsonDocument.Parse(OpenedPage.Unpacked(OpenedPage.Inside(page, "study")));
        Assert.Contains("</script><!--", json.RootElement.GetProperty("study").GetProperty("notes")[1].GetString(), StringComparison.Ordinal);
        Assert.DoesNotContain("</script><!--", page, StringComparison.Ordinal);
        Assert.Equal(page.Split("<script").Length, page.Split("</script>").Length);
    }

    [Fact]
    public void Render_LooksOfParts_LieBesideTheStudyOnceEach()
    {
        StudyDocument study = FixtureStudy.WithModels;
        string page = ReportPage.Render(study);

        using JsonDocument json = JsonDocument.Parse(OpenedPage.Unpacked(OpenedPage.Inside(page, "study")));
        JsonElement[] models = [.. json.RootElement.GetProperty("models").EnumerateArray()];
        JsonElement[] pictures = [.. json.RootElement.GetProperty("pictures").EnumerateArray()];
        for (int i = 0; i < study.Parts.Count; i++)
        {
            JsonElement part = json.RootElement.GetProperty("study").GetProperty("parts")[i];
            Assert.False(part.TryGetProperty("model", out _) || part.TryGetProperty("picture", out _));
            string? picture = JsonSerializer.Deserialize<string>(OpenedPage.Inside(page, $"picture-{pictures[i].GetInt32()}"));
            Assert.Equal(study.Parts[i].Picture, picture);
            if (study.Parts[i].Model is not { } model) Assert.Equal(JsonValueKind.Null, models[i].ValueKind);
            else Assert.Equal(model.Positions, PointsIn(OpenedPage.Inside(page, $"model-{models[i].GetInt32()}")));
        }
        int distinct = study.Parts.Where(p => p.Model is not null)
            .Select(p => JsonSerializer.Serialize(p.Model, DocumentJson.Compact)).Distinct(StringComparer.Ordinal).Count();
        Assert.Equal(distinct, page.Split("id=\"model-").Length - 1);
        Assert.True(distinct < study.Parts.Count, "The fixture has no two parts of one mesh.");
    }

    [Fact]
    public void JsonForHtml_LineSeparators_KeepTheirValue()
    {
        const string Text = "a\u2028b\u2029c<!--";
        string escaped = ReportPage.JsonForHtml(JsonSerializer.Serialize(Text, DocumentJson.Compact));

        Assert.DoesNotContain('\u2028', escaped);
        Assert.DoesNotContain('\u2029', escaped);
        Assert.Equal(Text, JsonSerializer.Deserialize<string>(escaped));
    }

    [Fact]
    public void Render_Page_AsksNothingOfTheNetwork()
    {
        string page = ReportPage.Render(FixtureStudy.WithoutModels);
        string head = page[..page.IndexOf("<script type=\"module\">", StringComparison.Ordinal)];

        Assert.Contains("default-src 'none'", head, StringComparison.Ordinal);
        Assert.Contains("script-src 'sha256-", head, StringComparison.Ordinal);
        Assert.DoesNotContain("src=\"http", page, StringComparison.Ordinal);
        Assert.DoesNotContain("href=\"http", page, StringComparison.Ordinal);
    }

    [Fact]
    public void Write_OverAnOlderReport_ReplacesItAndLeavesNothingAside()
    {
        string folder = Path.Combine(Repository.Root, "artifacts", "fixture");
        Directory.CreateDirectory(folder);
        string path = Path.Combine(folder, "report.html");
        File.WriteAllText(path, "older");

        ReportWriter.Write(FixtureStudy.WithModels, path);

        Assert.StartsWith("<!doctype html>", File.ReadAllText(path), StringComparison.Ordinal);
        Assert.Empty(Directory.GetFiles(folder, "*.part"));
    }

    /// <summary>The points of a packed model as the documents write them: base64 of little-endian uint16.</summary>
    private static string PointsIn(string packed)
    {
        byte[] bytes = OpenedPage.Unpacked(packed);
        int heading = BinaryPrimitives.ReadInt32LittleEndian(bytes), length = BinaryPrimitives.ReadInt32LittleEndian(bytes.AsSpan(4));
        byte[] spread = bytes[(8 + heading)..(8 + heading + length)];
        var numbers = new byte[length];
        var before = new ushort[3];
        for (int i = 0; i < length / 2; i++)
        {
            before[i % 3] += (ushort)(spread[i] | spread[length / 2 + i] << 8);
            BinaryPrimitives.WriteUInt16LittleEndian(numbers.AsSpan(2 * i), before[i % 3]);
        }
        return Convert.ToBase64String(numbers);
    }
}
