using System.Text;
using Platewright.Study.Examining;

namespace Platewright.Tests.Study;

/// <summary>
/// Who made a model and under which terms: the well-known metadata of the 3MF core specification 1.3 (section 3.3: Designer,
/// LicenseTerms, Copyright), and what AMF files write in theirs.
/// </summary>
public sealed class OriginTests : IDisposable
{
    private readonly ScratchFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void Demo_FileThatSaysIt_TellsMakerAndLicence()
    {
        string models = Path.Combine(Repository.Root, "demo", "workshop", "models");
        ExaminedPart shade = Examined(Path.Combine(models, "reading-lamp", "shade-medium.3mf"));
        ExaminedPart bracket = Examined(Path.Combine(models, "tool-wall", "shelf-bracket.amf"));
        ExaminedPart silent = Examined(Path.Combine(models, "reading-lamp", "shade-large.3mf"));

        Assert.Equal(("Tamsin Okuyo, Fennside Lamp Club", "CC BY 4.0"), (shade.MadeBy, shade.Licence));
        Assert.Equal(("Ottoline Varga", "free for any use, no warranty"), (bracket.MadeBy, bracket.Licence));
        Assert.Equal((null, null), (silent.MadeBy, silent.Licence));
    }

    [Fact]
    public void Amf_LicenceAndCopyright_AreBothTold()
    {
        const string Amf = """
            <amf unit="millimeter"><metadata type="copyright">(c) 2026 M. Okuyo</metadata><metadata type="license">CC BY 4.0</metadata>
            <object id="0"><mesh><vertices>
            <vertex><coordinates><x>0</x><y>0</y><z>0</z></coordinates></vertex><vertex><coordinates><x>9</x><y>0</y><z>0</z></coordinates></vertex>
            <vertex><coordinates><x>0</x><y>9</y><z>0</z></coordinates></vertex><vertex><coordinates><x>0</x><y>0</y><z>9</z></coordinates></vertex>
            </vertices><volume><triangle><v1>0</v1><v2>2</v2><v3>1</v3></triangle><triangle><v1>0</v1><v2>1</v2><v3>3</v3></triangle>
            <triangle><v1>1</v1><v2>2</v2><v3>3</v3></triangle><triangle><v1>2</v1><v2>0</v2><v3>3</v3></triangle></volume></mesh></object></amf>
            """;
        File.WriteAllText(_folder["corner.amf"], Amf);
        ExaminedPart part = Examined(_folder["corner.amf"]);

        Assert.Null(part.MadeBy);
        Assert.Equal("CC BY 4.0; (c) 2026 M. Okuyo", part.Licence);
    }

    [Theory]
    [InlineData(null, null)]
    [InlineData(" \r\n\t ", null)]
    [InlineData("A\u0000B\u001b[31mC", "A B [31mC")]
    [InlineData("Ada\r\n\tLind", "Ada Lind")]
    [InlineData("\u202eevil\u2066x\u200b", "evilx")]
    [InlineData("<script>alert(1)</script>", "<script>alert(1)</script>")]
    [InlineData("Zoë 渡辺 👩", "Zoë 渡辺 👩")]
    public void Of_Text_IsOnePlainLine(string? said, string? shown) => Assert.Equal(shown, OriginText.Of(said));

    [Fact]
    public void Of_BrokenSurrogate_IsLeftOut() => Assert.Equal("ab", OriginText.Of("a" + (char)0xD800 + "b"));

    [Fact]
    public void Of_LongText_IsCutBetweenCharacters()
    {
        string shown = OriginText.Of(string.Concat(Enumerable.Repeat("👩", 5_000)))!;

        Assert.InRange(shown.Length, OriginText.MostCharacters - 2, OriginText.MostCharacters);
        Assert.EndsWith("…", shown, StringComparison.Ordinal);
        Assert.Equal(shown, Encoding.UTF8.GetString(Encoding.UTF8.GetBytes(shown)));
    }

    [Fact]
    public void Of_TheSameTwice_SaysItOnce() => Assert.Equal("CC0", OriginText.Of("CC0", " CC0 "));

    private static ExaminedPart Examined(string path) =>
        Assert.Single(Examiner.Examine(path, ExamineOptions.Default, CancellationToken.None).Parts);
}
