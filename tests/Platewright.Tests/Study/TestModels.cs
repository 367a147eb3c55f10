using System.Globalization;
using System.Text;

namespace Platewright.Tests.Study;

/// <summary>Small models made up for tests, as text so that a failing test can be read.</summary>
internal static class TestModels
{
    /// <summary>A closed box from the origin, mm, as ASCII STL.</summary>
    public static void WriteBox(string path, double x, double y, double z)
    {
        double[][] corners =
        [
            [0, 0, 0], [x, 0, 0], [x, y, 0], [0, y, 0], [0, 0, z], [x, 0, z], [x, y, z], [0, y, z],
        ];
        int[][] sides = [[3, 2, 1, 0], [4, 5, 6, 7], [0, 1, 5, 4], [1, 2, 6, 5], [2, 3, 7, 6], [3, 0, 4, 7]];
        Write(path, corners, sides.SelectMany(s => new[] { new[] { s[0], s[1], s[2] }, [s[0], s[2], s[3]] }));
    }

    /// <summary>A closed lumpy ball of about 100 mm with many hull corners: a part that takes a while to fit.</summary>
    public static void WriteLump(string path, int seed, int rings = 6)
    {
        Random random = new(seed);
        int around = 2 * rings;
        double[] stretch = [30 + 60 * random.NextDouble(), 30 + 60 * random.NextDouble(), 30 + 60 * random.NextDouble()];
        List<double[]> corners = [[0, 0, -stretch[2]]];
        for (int ring = 1; ring < rings; ring++)
        {
            for (int i = 0; i < around; i++)
            {
                double polar = Math.PI * ring / rings, turn = 2 * Math.PI * i / around, r = 0.9 + 0.1 * random.NextDouble();
                corners.Add(
                [
                    r * stretch[0] * Math.Sin(polar) * Math.Cos(turn), r * stretch[1] * Math.Sin(polar) * Math.Sin(turn),
                    -r * stretch[2] * Math.Cos(polar),
                ]);
            }
        }
        corners.Add([0, 0, stretch[2]]);
        int top = corners.Count - 1;
        List<int[]> faces = [];
        for (int i = 0; i < around; i++)
        {
            int next = (i + 1) % around;
            faces.Add([0, 1 + next, 1 + i]);
            for (int ring = 0; ring < rings - 2; ring++)
            {
                int low = 1 + ring * around, high = low + around;
                faces.Add([low + i, low + next, high + next]);
                faces.Add([low + i, high + next, high + i]);
            }
            faces.Add([top, 1 + (rings - 2) * around + i, 1 + (rings - 2) * around + next]);
        }
        Write(path, corners, faces);
    }

    private static void Write(string path, IReadOnlyList<double[]> corners, IEnumerable<int[]> faces)
    {
        StringBuilder text = new("solid test\n");
        foreach (int[] face in faces)
        {
            text.Append("facet normal 0 0 0\nouter loop\n");
            foreach (int corner in face)
                text.Append(CultureInfo.InvariantCulture, $"vertex {corners[corner][0]:R} {corners[corner][1]:R} {corners[corner][2]:R}\n");
            text.Append("endloop\nendfacet\n");
        }
        File.WriteAllText(path, text.Append("endsolid test\n").ToString());
    }
}
