using Platewright.Geometry;
using Platewright.Study.Documents;
using Platewright.Study.Pictures;

namespace Platewright.Tests.Report;

/// <summary>An invented study, as large as a real small one: what the page is drawn and tested with.</summary>
internal static class FixtureStudy
{
    private static readonly AllowanceDocument Free = new(true, true, true, true, 0.95);
    private static readonly AllowanceDocument Exact = new(true, true, false, false, 1);

    private static readonly Dictionary<string, HeatDocument> Heats = new(StringComparer.Ordinal)
    {
        ["PLA"] = new(215, 60, 0),
        ["PETG"] = new(240, 80, 0),
        ["ASA"] = new(255, 100, 45),
        ["PC"] = new(285, 110, 60),
    };

    private static readonly Lazy<StudyDocument> Made = new(() => Make());

    public static StudyDocument WithModels => Made.Value;

    /// <summary>The same study as it is shared by those who keep their models to themselves.</summary>
    public static StudyDocument WithoutModels =>
        WithModels with { Parts = [.. WithModels.Parts.Select(p => p with { Model = null })] };

    /// <summary>The same study where nothing was estimated.</summary>
    public static StudyDocument WithoutBuilds => WithoutModels with
    {
        Sizing = null,
        Machines = [.. WithModels.Machines.Select(m => m with { Builds = null, Cycles = [] })],
        Parts =
        [
            .. WithoutModels.Parts.Select(p => p with { Fits = [.. p.Fits.Select(f => f with { Estimate = null })] }),
        ],
    };

    private static StudyDocument Make()
    {
        var work = FixtureWork.Rows.Select(row => (row, Part: MakePart(row))).ToList();
        var machines = FixtureMachines.All();
        var parts = work.Select(w => w.Part with
        {
            Fits = [.. machines.Select(m => FixtureFit.On(m, w.row.Size, w.Part.Need, w.Part.Allowed))],
        }).ToList();
        var projects = parts.GroupBy(p => p.Project, StringComparer.Ordinal)
            .Select(g => FixtureProjects.Of(g.Key, [.. g], machines)).ToList();
        machines = [.. machines.Select(m => m with { Coverage = FixtureProjects.Coverage(m.Id, projects) })];
        List<CurveDocument> curves = FixtureProjects.Curves(projects, parts, machines);
        return new()
        {
            Name = "Quay Street workshop",
            Headline = "A 330 mm machine would make 9 of your 14 projects; your 210 makes 5.",
            Options = new(2, 0.95, 0.45, 0.95, 1e-4),
            Machines = machines,
            Projects = projects,
            Parts = parts,
            Curves = curves,
            Sizing = FixtureCurves.Added(FixtureSizing.Of(machines, projects, curves), machines, projects, curves),
            Alike = [new("scaled", [parts[0].Id, parts[1].Id], 0.92, "Shelf bracket, left is Shelf bracket, right at 92 %.")],
            Unusable = [new("jigs/old-clamp.stl", "Byte 84: the file says 12,408 triangles and ends after 911; export it again.")],
            Notes = ["Fourteen projects say little about work you never tried: wanted parts stand in for it only where you "
                + "listed them.", "<b>Not</b> markup: </script><!-- names are shown as they are."],
            Seconds = 3.4,
        };
    }

    private static PartDocument MakePart(FixtureWork.Row row)
    {
        bool wanted = row.Shape == "wanted";
        Mesh? mesh = wanted ? null : FixtureShapes.Make(row.Shape, row.Size);
        byte[] picture = mesh is null ? PartPicture.OfBox(row.Size) : PartPicture.Of(mesh);
        double[] size = [row.Size.X, row.Size.Y, row.Size.Z];
        double? wall = wanted ? null : row.WallMm;
        AllowanceDocument allowed = row.Exact ? Exact : Free;
        HeatDocument? heat = row.Material is null ? null : Heats[row.Material];
        string id = $"{row.Project}/{row.Name}".ToLowerInvariant().Replace(' ', '-');
        return new(
            id, row.Name, row.Project, wanted ? null : id + ".stl", null, wanted, row.Quantity, row.Material,
            null, row.AnyOf, allowed, size, [.. size.OrderDescending()], wanted ? null : row.Size.X * row.Size.Y * row.Size.Z * 0.3,
            mesh?.TriangleCount ?? 0, !wanted, wall,
            wall < 0.45 ? [
                new("thin_walls", 5, "The thinnest wall is 0.3 mm, below one bead of 0.45 mm: it would vanish.",
                    [[0, 0, size[2] / 2, 0, 0, size[2] / 2 - 0.3], [size[0] / 4, 0, size[2] / 2, size[0] / 4, 0, size[2] / 2 - 0.3]]),
                new("unit_doubt", 1, "The part is small. Say the unit if it is another.", []),
            ] : [],
            FixtureFit.Need(row.Size, allowed, heat, wall), [], mesh is not null ? ViewModel.Of(mesh, 1200) : null,
            PartPicture.ToDataUri(picture))
        {
            Growth = 1,
            MadeBy = row.Shape == "gear" ? "Ottoline <b>Varga</b>" : null,
            Licence = row.Shape == "gear" ? "CC BY 4.0" : null,
        };
    }
}
