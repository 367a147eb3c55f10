using System.Text;
using System.Text.RegularExpressions;
using Platewright.Report;
using Platewright.Study;
using Platewright.Study.Documents;
using Platewright.Study.Learning;
using Platewright.Study.Output;
using Platewright.Study.Pipeline;
using Platewright.Study.Store;
using Platewright.Tests.Report;

namespace Platewright.Tests.Study;

/// <summary>What is passed on with names hidden holds none of them.</summary>
public sealed partial class HidingTests(HidingTests.SharedStore store) : IClassFixture<HidingTests.SharedStore>, IDisposable
{
    /// <summary>Words of ours, of the trade or of an output format that some things of the demo are called by too.</summary>
    private static readonly string[] Ordinary =
        ["angle", "comb", "cylinder", "dial", "duct", "foot", "grip", "hands", "handle", "hook", "housing", "large", "left", "medium", "object", "plate",
         "rail", "right", "small", "steps", "stop", "tray", "tube", "workshop"];

    private readonly ScratchFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Theory]
    [InlineData("workshop")]
    [InlineData("school")]
    public void Demo_WithNamesHidden_HoldsNoneOfThem(string demo)
    {
        StudySource source = StudySource.Open(
            Path.Combine(Repository.Root, "demo", demo, "study.toml"), TestContext.Current.CancellationToken);
        StudyDocument shown = Run(source, hideNames: false), hidden = Run(source, hideNames: true);
        string[] names = [.. NamesOf(source.Plan, shown).Where(n => n.Length >= 4 && !Ordinary.Contains(n)).Distinct()];
        Assert.InRange(names.Length, 30, 1000);
        Assert.Contains(names, n => Found(n, TextOf(shown)));
        string text = TextOf(hidden);
        Assert.Equal([], names.Where(n => Found(n, text)));
        // The page is the bundle, which no study changes, around the same document.
        Assert.Equal([], names.Where(n => Found(n, Regex.Unescape(OpenedPage.Study(ReportPage.Render(hidden))))));
        Assert.All(hidden.Parts, p => Assert.Equal((null, null), (p.MadeBy, p.Licence)));
    }

    [Fact]
    public void Hiding_ChangesNamesOnly()
    {
        StudySource source = StudySource.Open(
            Path.Combine(Repository.Root, "demo", "workshop", "study.toml"), TestContext.Current.CancellationToken);
        StudyDocument shown = Run(source, hideNames: false), hidden = Run(source, hideNames: true);
        Assert.Equal("Shared study", hidden.Name);
        Assert.Equal(shown.Headline, hidden.Headline);
        Assert.Equal(shown.Projects.Select(p => p.Id), hidden.Projects.Select(p => p.Id));
        Assert.Equal(shown.Parts.Select(p => p.SizeMm), hidden.Parts.Select(p => p.SizeMm));
        Assert.Equal(shown.Unusable.Count, hidden.Unusable.Count);
        Assert.All(hidden.Projects, p => Assert.Matches(@"^Project \d+$", p.Name));
        Assert.All(hidden.Parts, p => Assert.Matches(@"^Part \d+\.\d+(?: · (?:item|object|shell) \d+)*$", p.Name));
        Assert.All(hidden.Parts, p => Assert.Matches(@"^file \d+\.\w+(?:/item \d+\.\w+)?$", p.File ?? "file 1.stl"));
        for (int i = 0; i < shown.Projects.Count; i++)
            Assert.Equal(shown.Projects[i].Verdicts.Select(v => (v.Verdict, v.CanMake)), hidden.Projects[i].Verdicts.Select(v => (v.Verdict, v.CanMake)));
    }

    [Fact]
    public void Hiding_KeepsWhatIsWrongWithAFile_WithoutWhatItQuotes()
    {
        File.WriteAllText(_folder["models", "Mrs Halloway.obj"], "o Halloway lamp\nv 0 0 0\nf Halloway 2 3\n");
        TestModels.WriteBox(_folder["models", "Halloway", "foot.stl"], 20, 20, 20);
        StudyDocument hidden = Run(StudySource.Open(_folder["models"], TestContext.Current.CancellationToken), hideNames: true);
        UnusableDocument bad = Assert.Single(hidden.Unusable);
        Assert.Matches(@"^file \d\.obj$", bad.File);
        Assert.StartsWith(bad.File, bad.Error, StringComparison.Ordinal);
        Assert.DoesNotContain("halloway", TextOf(hidden), StringComparison.OrdinalIgnoreCase);
    }

    private StudyDocument Run(StudySource source, bool hideNames)
    {
        using ResultStore results = ResultStore.Open(store.Path);
        return StudyPipeline.Run(
            source, new Sharing(WithModels: false, hideNames), withEstimates: false, LearnedMachines.Read(_folder.Path), results,
            new SilentProgress(), TestContext.Current.CancellationToken).Document;
    }

    private static IEnumerable<string> NamesOf(StudyPlan plan, StudyDocument shown) =>
        new[] { plan.Name, plan.Note }
            .Concat(plan.Projects.SelectMany(p => p.Parts.SelectMany(part => new[] { part.Name, part.Object, part.AnyOf, Stem(part.File) })
                .Concat([p.Name, p.Note])))
            .Concat(shown.Parts.SelectMany(p => new[] { p.Name, p.Object, Stem(p.File) }))
            .OfType<string>().SelectMany(n => n.Split(", ").Append(n)).Select(n => n.ToLowerInvariant());

    private static string? Stem(string? file) => Path.GetFileNameWithoutExtension(file);

    private static bool Found(string name, string text) =>
        Regex.IsMatch(text, $@"(?<!\w){Regex.Escape(name)}(?!\w)", RegexOptions.IgnoreCase, TimeSpan.FromSeconds(10));

    /// <summary>study.json and parts.csv, without the pixels of pictures.</summary>
    private static string TextOf(StudyDocument study)
    {
        using MemoryStream written = new();
        StudyJson.Write(study, written);
        PartsCsv.Write(study, written);
        return Regex.Unescape(WithoutPictures(Encoding.UTF8.GetString(written.ToArray())));
    }

    private static string WithoutPictures(string text) => Picture().Replace(text, "");

    [GeneratedRegex("data:image/png;base64,[A-Za-z0-9+/=\\\\u]*", RegexOptions.None, matchTimeoutMilliseconds: 10_000)]
    private static partial Regex Picture();

    /// <summary>Models are fitted once for all tests.</summary>
    public sealed class SharedStore : IDisposable
    {
        private readonly ScratchFolder _folder = new();

        public string Path => _folder["store"];

        public void Dispose() => _folder.Dispose();
    }

    private sealed class SilentProgress : IProgressListener
    {
        public void Begin(string stage, int items)
        {
        }

        public void Advance(string what)
        {
        }
    }
}
