using Platewright.Geometry;
using Platewright.Study.Documents;
using Platewright.Study.Pictures;

namespace Platewright.Tests.Report;

/// <summary>
/// An invented study of 1,000 parts on 10 machines: as much in every part as real ones have, and nothing shared between two of
/// them, so that the page is as heavy as it can be. The same on every machine.
/// </summary>
internal static class FixtureLarge
{
    public const int Parts = 1000, PartsOfProject = 5;

    private const int Seed = 20_260;

    private static readonly AllowanceDocument Free = new(true, true, true, true, 0.95);
    private static readonly string[] Shapes = ["hook", "bracket", "cover", "ring", "carrier", "spout", "lever", "base"];
    private static readonly (string Name, HeatDocument Heat)[] Materials =
        [("PLA", new(215, 60, 0)), ("PETG", new(240, 80, 0)), ("ASA", new(255, 100, 45)), ("PC", new(285, 110, 60))];

    public static StudyDocument Make()
    {
        var random = new Random(Seed);
        List<MachineDocument> machines = Machines();
        List<PartDocument> parts = [.. Enumerable.Range(0, Parts).Select(i => Part(i, random, machines))];
        List<ProjectDocument> projects = [.. parts.GroupBy(p => p.Project, StringComparer.Ordinal)
            .Select(g => FixtureProjects.Of(g.Key, [.. g], machines))];
        machines = [.. machines.Select(m => m with { Coverage = FixtureProjects.Coverage(m.Id, projects) })];
        List<CurveDocument> curves = FixtureProjects.Curves(projects, parts, machines);
        return FixtureStudy.WithModels with
        {
            Name = "Long Quay print service",
            Headline = "Of 200 projects, Closed 330 can make the most.",
            Machines = machines,
            Projects = projects,
            Parts = parts,
            Curves = curves,
            Sizing = FixtureSizing.Of(machines, projects, curves),
            Alike = [],
        };
    }

    private static List<MachineDocument> Machines()
    {
        List<MachineDocument> machines = FixtureMachines.All();
        foreach (MachineDocument like in machines.Where(m => m.BuildVolume.Shape == "box").Take(3).ToList())
            machines.Add(like with { Id = like.Id + "-tall", Name = like.Name + " tall" });
        return machines;
    }

    private static PartDocument Part(int i, Random random, List<MachineDocument> machines)
    {
        Vec3 size = new(20 + 300 * random.NextDouble(), 15 + 200 * random.NextDouble(), 5 + 150 * random.NextDouble());
        Mesh mesh = Pebble(size, random);
        (string material, HeatDocument heat) = Materials[random.Next(Materials.Length)];
        string name = $"{Shapes[i % Shapes.Length]} {i + 1}", project = $"Order {i / PartsOfProject + 1}";
        NeedDocument need = FixtureFit.Need(size, Free, heat, 1.2);
        return new(
            $"{project}/{name}".ToLowerInvariant().Replace(' ', '-'), name, project, $"orders/{i / PartsOfProject + 1}/{name}.stl", null, false,
            1 + random.Next(4), material, null, null, Free, [size.X, size.Y, size.Z], [size.X, size.Y, size.Z],
            size.X * size.Y * size.Z * random.NextDouble(), mesh.TriangleCount, true, 1.2, [], need,
            [.. machines.Select(m => FixtureFit.On(m, size, need, Free))], ViewModel.Of(mesh, 1200),
            PartPicture.ToDataUri(PartPicture.Of(mesh)))
        {
            Growth = 1,
        };
    }

    /// <summary>An uneven lump of 1,152 triangles, so that neither its points nor its picture pack better than a real part's.</summary>
    private static Mesh Pebble(Vec3 size, Random random)
    {
        const int Rings = 24, Sides = 25;
        List<Vec3> points = [new(0, 0, -size.Z / 2)];
        for (int r = 1; r < Rings; r++)
        {
            for (int s = 0; s < Sides; s++)
            {
                double polar = Math.PI * r / Rings, around = 2 * Math.PI * s / Sides, away = 0.44 + 0.06 * random.NextDouble();
                points.Add(new(
                    size.X * away * Math.Sin(polar) * Math.Cos(around), size.Y * away * Math.Sin(polar) * Math.Sin(around),
                    -size.Z * away * Math.Cos(polar)));
            }
        }
        points.Add(new(0, 0, size.Z / 2));
        int top = points.Count - 1;
        List<int> corners = [];
        for (int s = 0; s < Sides; s++)
        {
            int next = (s + 1) % Sides;
            corners.AddRange([0, 1 + next, 1 + s, top, top - Sides + s, top - Sides + next]);
            for (int r = 0; r < Rings - 2; r++)
            {
                int low = 1 + r * Sides, high = low + Sides;
                corners.AddRange([low + s, low + next, high + s, low + next, high + next, high + s]);
            }
        }
        return new Mesh([.. points], [.. corners]);
    }
}
