using Platewright.Formats.Toml;
using Platewright.Study;
using Platewright.Tests.Machines;

namespace Platewright.Tests.StudyFile;

public sealed class StudyFileErrorTests : IDisposable
{
    private const string Sound = One + "file = \"a.stl\"";

    private const string One = "[[project]]\nname = \"one\"\n[[project.part]]\n";

    private readonly StudyFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Theory]
    [InlineData("machines = [\"generic-210-enclosd\"]\n", Sound, 1, "machines[1]", "\"generic-210-enclosed\"?")]
    [InlineData("machines = [\"my.toml\"]\n", Sound, 1, "machines[1]", "no machine file \"my.toml\"")]
    [InlineData("machines = [\n\"generic-105-open\",\n\"Generic 105 open\"]\n", Sound, 3, "machines[2]", "already")]
    [InlineData("machines = []\n", Sound, 1, "machines", "at least one machine")]
    [InlineData("machines = \"generic-105-open\"\n", Sound, 1, "machines", "a list of texts")]
    [InlineData("least_scale = 1.2\n", Sound, 1, "least_scale", "from 0.05 to 1")]
    [InlineData("bead_width_mm = 0\n", Sound, 1, "bead_width_mm", "greater than 0")]
    [InlineData("tolerance = 0\n", Sound, 1, "tolerance", "from 1E-09")]
    [InlineData("folder = \"nowhere\"\n", Sound, 1, "folder", "no folder \"nowhere\"")]
    [InlineData("", Sound + "\nmaterail = \"PLA\"", 5, "project[1].part[1].materail", "Did you mean \"material\"?")]
    [InlineData("", Sound + "\nmaterial = \"PLB\"", 5, "project[1].part[1].material", "no material is called \"PLB\"")]
    [InlineData("", Sound + "\nunit = \"yard\"", 5, "project[1].part[1].unit", "um, mm, cm, m, in or ft")]
    [InlineData("", Sound + "\nquantity = 0", 5, "project[1].part[1].quantity", "from 1 to 100000")]
    [InlineData("", Sound + "\nquantity = 1.5", 5, "project[1].part[1].quantity", "a whole number")]
    [InlineData("", Sound + "\nallow = { rotate = true }", 5, "project[1].part[1].allow.rotate", "unknown key")]
    [InlineData("", One + "name = \"x\"", 3, "project[1].part[1]", "names nothing to study")]
    [InlineData("", Sound + "\ndimensions_mm = [1, 2, 3]", 5, "project[1].part[1].dimensions_mm", "only one of")]
    [InlineData("", One + "dimensions_mm = [1, 2, 3]\nobject = \"x\"", 5, "project[1].part[1].object", "no file")]
    [InlineData("", One + "dimensions_mm = [1, 2, 3]\nseparate = true", 5, "project[1].part[1].separate", "no shells")]
    [InlineData("", One + "any_of = [{ file = \"a.stl\" }]", 4, "project[1].part[1].any_of", "at least 2 alternatives")]
    [InlineData("", One + "any_of = [{ file = \"a.stl\" }, { name = \"b\" }]", 4,
        "project[1].part[1].any_of[2]", "names nothing")]
    [InlineData("", "[[project]]\nname = \"one\"", 1, "project[1]", "the project has no parts")]
    [InlineData("", "[[project]]\npart = [{ file = \"a.stl\" }]", 1, "project[1].name", "missing")]
    [InlineData("", Sound + "\n" + One + "file = \"b.stl\"", 6, "project[2].name", "already called \"one\"")]
    [InlineData("", "[[material]]\nname = \"new\"\n" + Sound, 1, "material[1].nozzle_c", "missing")]
    [InlineData("", "[[project]]\nname = \"one\"\nfolder = \"empty\"", 3, "project[1].folder", "holds no model files")]
    [InlineData("cost = { life_years = 0 }\n", Sound, 1, "cost.life_years", "greater than 0")]
    [InlineData("cost = { failure_share = 1 }\n", Sound, 1, "cost.failure_share", "from 0 to 0.95")]
    [InlineData("cost = { energy_per_kwh = 0.3, range = { energy_per_kwh = [0.4, 0.5] } }\n", Sound, 1,
        "cost.range.energy_per_kwh", "around 0.3")]
    [InlineData("aim = { cover_share = 1.2 }\n", Sound, 1, "aim.cover_share", "at most 1")]
    [InlineData("aim = { owned = [\"generic-210-enclosd\"] }\n", Sound, 1, "aim.owned[1]", "generic-210-enclosed")]
    [InlineData("aim = { budget = { amount = 9, currency = \"USD\" } }\n", Sound, 1, "aim.budget.currency", "reckons in EUR")]
    [InlineData("place = { attended = [] }\n", Sound, 1, "place.attended", "nobody is ever there")]
    [InlineData("place = { nights = false }\n", Sound, 1, "place.nights", "when somebody is there")]
    [InlineData("place = { attended = [{ days = [\"mon\"], from = \"12:00\", to = \"09:00\" }] }\n", Sound, 1,
        "place.attended[1].to", "a later time")]
    [InlineData("place = { attended = [{ days = [\"moonday\"], from = \"9:00\", to = \"10:00\" }] }\n", Sound, 1,
        "place.attended[1].days[1]", "found \"moonday\"")]
    [InlineData("place = { lesson_min = 90, attended = [{ days = [\"mon\"], from = \"9:00\", to = \"10:00\" }] }\n", Sound, 1,
        "place.lesson_min", "the longest is 1 h")]
    [InlineData("work = { of = 1 }\n", Sound + "\n[[project]]\nname = \"two\"\npart = [{ file = \"a.stl\" }]", 1, "work.of", "has 2 projects")]
    [InlineData("order = [{ project = \"on\", copies = 3, from = \"mon 8:00\", by = \"mon 9:00\" }]\n", Sound, 1,
        "order[1].project", "no project is called")]
    [InlineData("same_money = [{ one = \"generic-105-open\", many = \"generic-105-open\" }]\n", Sound, 1,
        "same_money[1].many", "another machine")]
    [InlineData("", "[[project]]\nname = \"one\"\ntimes = 2\npart = [{ file = \"a.stl\" }]", 3, "project[1].times", "expected per")]
    [InlineData("", "[[project]]\nname = \"one\"\nshare_of_work = 0.7\npart = [{ file = \"a.stl\" }]\n"
        + "[[project]]\nname = \"two\"\nshare_of_work = 0.6\npart = [{ file = \"b.stl\" }]", 7,
        "project[2].share_of_work", "130 %")]
    [InlineData("", "[[project]]\nname = \"one\"\nshare_of_work = 0.7\npart = [{ file = \"a.stl\" }]\n"
        + "[[project]]\nname = \"two\"\npart = [{ file = \"b.stl\" }]", 5, "project[2]", "add share_of_work")]
    [InlineData("", Sound + "\nleast_scale = 0.9\nallow = { scale = false }", 6,
        "project[1].part[1].allow.scale", "keep one")]
    public void Read_Nonsense_SaysLineKeyAndExpectation(string head, string body, int line, string key, string says)
    {
        Directory.CreateDirectory(Path.Combine(_folder.Root, "empty"));

        DescriptionException refused = Assert.Throws<DescriptionException>(() => _folder.Read(head + body));

        Assert.Contains(refused.Errors, e =>
            e.File!.EndsWith("study.toml", StringComparison.Ordinal) && e.Line == line && e.Key == key
            && e.Message.Contains(says, StringComparison.Ordinal));
    }

    [Fact]
    public void Read_BrokenMachineFile_SaysWhereInBothFiles()
    {
        _folder.Add("bench.toml", "name = \"Bench\"\n[build_volume]\nshape = \"box\"\nsize_mm = [200]\n");

        DescriptionException refused = Assert.Throws<DescriptionException>(
            () => _folder.Read("machines = [\"bench.toml\"]\n" + Sound));

        DescriptionError error = Assert.Single(refused.Errors);
        Assert.Equal((1, "machines[1]"), (error.Line, error.Key));
        Assert.Contains("bench.toml, line 4, build_volume.size_mm: expected", error.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Read_NothingAnywhere_IsRefused() => Assert.Contains(
        "nothing to study", Assert.Throws<DescriptionException>(() => _folder.Read("name = \"x\"")).Message,
        StringComparison.Ordinal);

    [Fact]
    public void Examples_OfTheStudyPage_Read()
    {
        string[] examples = Fenced.Toml(File.ReadAllText(Path.Combine(Repository.Root, "docs", "study-file.md")));
        _folder.AddModels("done/clip.stl", "done/Name plates/plate.stl");

        Assert.Equal(3, examples.Length);
        Assert.Equal(3, _folder.Read(examples[0]).Projects.Length);
        SizingPlan sizing = _folder.Read(examples[1]).Sizing;
        Assert.Equal((240, 20.0, 24), (sizing.Work.Population, sizing.ProjectsPerMonth, sizing.Orders[0].Copies));
        Assert.Equal((41, 32), (100 * sizing.Costs.FailureShare.Value, 100 * sizing.Costs.EnergyPerKwh.Value));
        Assert.Equal(2, _folder.Read(examples[2]).OwnMaterials.Length);
    }
}
