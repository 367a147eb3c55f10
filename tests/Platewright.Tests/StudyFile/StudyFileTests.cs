using Platewright.Fit;
using Platewright.Formats;
using Platewright.Formats.Toml;
using Platewright.Geometry;
using Platewright.Machines;
using Platewright.Study;

namespace Platewright.Tests.StudyFile;

public sealed class StudyFileTests : IDisposable
{
    private readonly StudyFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void Read_FullStudy_ResolvesEverything()
    {
        _folder.Add("bench.toml", "name = \"Bench\"\n[build_volume]\nshape = \"box\"\nsize_mm = [200, 200, 180]\n");
        StudyPlan plan = _folder.Read("""
            name = "Workshop"
            note = "spring"
            machines = ["generic-210-enclosed", "bench.toml"]
            bead_width_mm = 0.5
            tight_mm = 1
            least_scale = 0.9
            tolerance = 1e-5
            confidence = 0.9
            [allow]
            cut = false
            [defaults]
            material = "petg"
            unit = "in"
            [[material]]
            name = "PC mix"
            nozzle_c = 275
            chamber_c = 55
            [[project]]
            name = "Hood"
            note = "two halves"
            [[project.part]]
            file = "hood\\shell.stl"
            quantity = 2
            colour = "grey"
            separate = true
            [[project.part]]
            file = "../pack/set.3mf"
            object = "ring"
            name = "seal"
            material = "pc MIX"
            unit = "mm"
            brim_mm = 4
            least_scale = 1
            allow = { tilt = false, cut = true }
            [[project]]
            name = "Crate"
            wanted = true
            [[project.part]]
            dimensions_mm = [265, 240.5, 310]
            """);

        Assert.Equal("Workshop", plan.Name);
        Assert.Equal("spring", plan.Note);
        Assert.Equal(["generic-210-enclosed", "bench"], plan.Machines.Select(m => m.Id));
        Assert.Equal(
            new StudyOptions { BeadWidthMm = 0.5, TightMm = 1, LeastScale = 0.9, Tolerance = 1e-5, Confidence = 0.9 },
            plan.Options);
        Assert.Equal(["Hood", "Crate"], plan.Projects.Select(p => p.Name));

        PlannedPart shell = plan.Projects[0].Parts[0];
        Assert.Equal(("shell", "hood/shell.stl", 2, "grey"), (shell.Name, shell.File, shell.Quantity, shell.Colour));
        Assert.Equal(Path.Combine(_folder.Root, "hood", "shell.stl"), shell.FullPath);
        Assert.Equal("PETG", shell.Material!.Name);
        Assert.Equal(LengthUnit.Inch, shell.Unit);
        Assert.True(shell.Separate);
        Assert.Null(shell.BrimMm);
        Assert.Equal(new Allowance(Turn: true, Tilt: true, Cut: false, LeastScale: 0.9), shell.Allowance);
        Assert.Equal((22, "project[1].part[1].file"), (shell.Place!.Line, shell.Place.Key));

        PlannedPart seal = plan.Projects[0].Parts[1];
        Assert.Equal(("seal", "../pack/set.3mf", "ring"), (seal.Name, seal.File, seal.Object));
        Assert.Equal(new HeatLimits(275, 0, 55), seal.Material!.Needs);
        Assert.Equal(LengthUnit.Millimetre, seal.Unit);
        Assert.Equal(4, seal.BrimMm);
        Assert.Equal(new Allowance(Turn: true, Tilt: false, Cut: true, LeastScale: 1), seal.Allowance);

        PlannedPart crate = Assert.Single(plan.Projects[1].Parts);
        Assert.True(plan.Projects[1].Wanted);
        Assert.Equal(new Vec3(265, 240.5, 310), crate.DimensionsMm);
        Assert.Equal("265 × 240.5 × 310 mm", crate.Name);
        Assert.Null(crate.File);
    }

    [Fact]
    public void Read_AnyOf_MakesAGroupThatInheritsFromThePart()
    {
        StudyPlan plan = _folder.Read("""
            [[project]]
            name = "Adapter"
            [[project.part]]
            name = "adapter"
            quantity = 3
            material = "ABS"
            any_of = [
              { file = "long.stl" },
              { file = "short.stl", quantity = 6, material = "ASA" },
              { dimensions_mm = [10, 20, 30], name = "sketch" },
            ]
            [[project.part]]
            any_of = [{ file = "a.stl" }, { file = "b.stl" }]
            [[project.part]]
            file = "c.stl"
            """);

        var parts = plan.Projects[0].Parts;
        Assert.Equal(["adapter", "adapter", "adapter", "a or b", "a or b", null], parts.Select(p => p.AnyOf));
        Assert.Equal([3, 6, 3, 1, 1, 1], parts.Select(p => p.Quantity));
        Assert.Equal(["ABS", "ASA", "ABS", null, null, null], parts.Select(p => p.Material?.Name));
        Assert.Equal(["long", "short", "sketch", "a", "b", "c"], parts.Select(p => p.Name));
        Assert.Equal(8, parts[0].Place!.Line);
    }

    [Fact]
    public void Read_OwnMaterialWithBundledName_ChangesOnlyWhatItStates()
    {
        StudyPlan plan = _folder.Read("""
            [[material]]
            name = "abs"
            brim_mm = 0
            [[project]]
            name = "one"
            material = "ABS"
            [[project.part]]
            file = "a.stl"
            """);

        Material bundled = MaterialCatalog.Find("ABS")!;
        Material own = plan.Projects[0].Parts[0].Material!;
        Assert.Equal(0, own.BrimMm);
        Assert.Equal(bundled.Needs, own.Needs);
        Assert.Equal(bundled.Shrinkage, own.Shrinkage);
        Assert.Equal("stated in the study file", own.Source);
    }

    [Fact]
    public void Read_WithoutProjects_TakesTheFolderBesideIt()
    {
        _folder.AddModels("clip.stl", "hood/shell.stl", "hood/deep/ring.obj", "pack.zip", "hood.3mf");

        StudyPlan plan = _folder.Read("[defaults]\nmaterial = \"PLA\"");

        Assert.Equal(
            ["clip", "hood.3mf", "hood/", "pack"], plan.Projects.Select(p => p.Name).Order(StringComparer.Ordinal));
        PlannedProject hood = plan.Projects.Single(p => p.Name == "hood/");
        Assert.Equal(["hood/deep/ring.obj", "hood/shell.stl"], hood.Parts.Select(p => p.File));
        Assert.All(hood.Parts, p => Assert.Equal("PLA", p.Material!.Name));
        Assert.Equal(MachineCatalog.Bundled, plan.Machines);
        Assert.Equal("study", plan.Name);
    }

    [Fact]
    public void Read_FolderAndWantedProject_GoTogether()
    {
        _folder.AddModels("done/clip.stl", "done/hood/shell.stl");

        StudyPlan plan = _folder.Read("""
            folder = "done"
            [[project]]
            name = "crate"
            wanted = true
            part = [{ dimensions_mm = [265, 240, 310] }]
            [[project]]
            name = "everything"
            folder = "done"
            """);

        Assert.Equal(["clip", "hood", "crate", "everything"], plan.Projects.Select(p => p.Name));
        Assert.Equal(["done/clip.stl", "done/hood/shell.stl"], plan.Projects[3].Parts.Select(p => p.File));
    }

    [Fact]
    public void ForFolder_NeedsNoConfiguration()
    {
        _folder.AddModels("b.stl", "a.stl", "set/two.stl", "set/one.stl");

        StudyPlan plan = Platewright.Study.StudyFile.ForFolder(_folder.Root, StudyFolder.Models(_folder.Root));

        Assert.Equal(["a", "b", "set"], plan.Projects.Select(p => p.Name));
        Assert.Equal(["set/one.stl", "set/two.stl"], plan.Projects[2].Parts.Select(p => p.File));
        Assert.Equal(Path.GetFileName(_folder.Root), plan.Name);
        Assert.Equal(new Allowance(), plan.Projects[0].Parts[0].Allowance);
    }

    [Fact]
    public void ForFolder_WithoutModels_IsRefused() => Assert.Contains(
        "no model files",
        Assert.Throws<DescriptionException>(() => Platewright.Study.StudyFile.ForFolder(_folder.Root, [])).Message,
        StringComparison.Ordinal);
}
