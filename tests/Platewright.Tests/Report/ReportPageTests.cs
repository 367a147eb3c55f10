using System.Text.Json;
using Platewright.Report;
using Platewright.Study.Documents;

namespace Platewright.Tests.Report;

public sealed class ReportPageTests
{
    [Fact]
    public void Render_NamesWithMarkup_StayInsideTheirElement()
    {
        string page = ReportPage.Render(FixtureStudy.WithoutModels);

        const string Opening = "<script type=\"application/json\" id=\"study\">";
        int from = page.IndexOf(Opening, StringComparison.Ordinal) + Opening.Length;
        string inside = page[from..page.IndexOf("</script>", from, StringComparison.Ordinal)];
        using JsonDocument json = JsonDocument.Parse(inside);
        Assert.DoesNotContain("<", inside, StringComparison.Ordinal);
        Assert.Contains("</script><!--", json.RootElement.GetProperty("notes")[1].GetString(), StringComparison.Ordinal);
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
}
