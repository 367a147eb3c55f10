using Platewright.Formats.Toml;

namespace Platewright.Tests.Formats.Toml;

public sealed class TomlFileTests
{
    [Fact]
    public void Parse_DottedInlineAndHeaderTables_AreTheSameTables()
    {
        string[] ways = ["a.b.c = 7", "a = { b = { c = 7 } }", "[a.b]\nc = 7", "[a]\nb.c = 7", "[a.b]\nc = 7\n[a]"];
        foreach (string text in ways)
            Assert.Equal("7", TomlFile.Parse(text, "t", r => $"{r.Table("a")?.Table("b")?.Count("c", 0, 9)}"));
    }

    [Fact]
    public void Parse_TablesUnderTables_BelongToTheLastOne()
    {
        const string text = "[[p]]\n[[p.q]]\nx = 1\n[[p.q]]\nx = 2\n[[p]]\n[[p.q]]\nx = 3\n";

        string read = TomlFile.Parse(text, "t", r =>
            string.Join('|', r.Tables("p").Select(p =>
                string.Join(',', p.Tables("q").Select(q => q.Count("x", 0, 9))))));

        Assert.Equal("1,2|3", read);
    }

    [Theory]
    [InlineData("a = 1\na = 2", 2, "a")]
    [InlineData("[t]\nx = 1\n[t]\ny = 1", 3, "t")]
    [InlineData("a.b = 1\na = 2", 2, "a")]
    [InlineData("a = { x = 1, x = 2 }", 1, "a.x")]
    [InlineData("[[p]]\nx = 1\n[p]\nx = 1", 3, "p")]
    [InlineData("p = 1\n[[p]]\nx = 1", 2, "p")]
    [InlineData("p = [1]\n[[p]]\nx = 1", 2, "p")]
    [InlineData("p = 1\n[p.q]\nx = 1", 2, "p")]
    [InlineData("a = { x = 1 }\na.y = 2", 2, "a")]
    [InlineData("[a.b]\nx = 1\n[a]\nb.y = 2", 4, "a.b")]
    [InlineData("\"a\" = 1\n'a' = 2", 2, "a")]
    public void Parse_SetTwice_IsRefusedWithBothLines(string text, int line, string key)
    {
        DescriptionException refused = Refused(text);
        Assert.Contains(refused.Errors, e =>
            e.Line == line && e.Key == key && e.Message.StartsWith("set twice", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("a = ", 1)]
    [InlineData("x = 1\nb = [1, 2\nc = 3", 3)]
    [InlineData("a = \"open", 1)]
    [InlineData("a = 99999999999999999999", 1)]
    [InlineData("a = \"\0\"", 1)]
    public void Parse_BrokenSyntax_NamesTheLine(string text, int line)
    {
        DescriptionException refused = Refused(text);
        Assert.Equal(line, refused.Errors[0].Line);
        Assert.Contains("not valid TOML", refused.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("[")]
    [InlineData("{a=")]
    public void Parse_DeepNesting_IsRefusedNotCrashed(string opening)
    {
        string deep = "a=" + string.Concat(Enumerable.Repeat(opening, 100_000));
        Assert.Contains("depth", Refused(deep).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Read_NotUtf8_NamesTheByte()
    {
        string path = Path.Combine(Path.GetTempPath(), $"{Guid.NewGuid():N}.toml");
        try
        {
            File.WriteAllBytes(path, [(byte)'a', (byte)'=', 0xFF]);
            var refused = Assert.Throws<DescriptionException>(() => TomlFile.Read(path, r => r.Text("a")));
            Assert.Contains("byte 2", refused.Message, StringComparison.Ordinal);
        }
        finally
        {
            File.Delete(path);
        }
    }

    [Theory]
    [InlineData("heigth_mm", "height_mm")]
    [InlineData("PETH", "PETG")]
    [InlineData("zzzz", null)]
    [InlineData("", null)]
    public void Suggestion_TakesTheNearestOrNone(string written, string? near) =>
        Assert.Equal(near, Suggestion.For(written, ["width_mm", "height_mm", "PETG", "name"]));

    private static DescriptionException Refused(string text) =>
        Assert.Throws<DescriptionException>(() => TomlFile.Parse<object>(text, "t.toml", r => r));
}
