using Platewright.Geometry;

namespace Platewright.Tests.Report;

/// <summary>Plain shapes that fill a box of the wanted size, centred on the origin: things to draw in tests.</summary>
internal static class FixtureShapes
{
    /// <summary>A shape by its name, stretched to <paramref name="size"/> mm.</summary>
    public static Mesh Make(string shape, Vec3 size) => Stretch(shape switch
    {
        "plate" => Extrude(Frame(0.42)),
        "bracket" => Extrude([new(0, 0), new(1, 0), new(1, 0.22), new(0.22, 0.22), new(0.22, 1), new(0, 1)]),
        "gear" => Extrude(Gear(18)),
        "hook" => Extrude(
            [new(0, 0), new(0.25, 0), new(0.25, 0.7), new(0.7, 0.7), new(0.7, 0.45), new(1, 0.45), new(1, 1), new(0, 1)]),
        "rail" => Extrude(
            [new(0, 0), new(1, 0), new(1, 0.3), new(0.7, 0.3), new(0.7, 1), new(0.3, 1), new(0.3, 0.3), new(0, 0.3)]),
        "funnel" => Revolve([new(1, 1), new(0.18, 0.45), new(0.15, 0), new(0.1, 0), new(0.13, 0.47), new(0.95, 1)]),
        "shade" => Revolve([new(0.55, 1), new(0.82, 0.6), new(1, 0), new(0.97, 0), new(0.79, 0.6), new(0.52, 1)]),
        "tube" => Revolve([new(1, 0), new(1, 1), new(0.86, 1), new(0.86, 0)]),
        "knob" => Revolve([new(0, 0), new(0.7, 0), new(0.8, 0.5), new(1, 0.6), new(1, 0.9), new(0.9, 1), new(0, 1)]),
        "box" => Extrude([new(0, 0), new(1, 0), new(1, 1), new(0, 1)]),
        _ => throw new ArgumentException($"No fixture shape is called {shape}.", nameof(shape)),
    }, size);

    private static List<Vec2> Frame(double notch) =>
        [new(0, 0), new(1, 0), new(1, 1), new(1 - notch, 1), new(1 - notch, 0.6), new(notch, 0.6), new(notch, 1), new(0, 1)];

    private static List<Vec2> Gear(int teeth)
    {
        var outline = new List<Vec2>();
        for (int i = 0; i < teeth * 4; i++)
        {
            double angle = 2 * Math.PI * i / (teeth * 4), radius = i % 4 < 2 ? 1 : 0.84;
            outline.Add(new(radius * Math.Cos(angle), radius * Math.Sin(angle)));
        }
        return outline;
    }

    /// <summary>A prism over an outline without holes, by cutting ears.</summary>
    private static Mesh Extrude(List<Vec2> outline)
    {
        int n = outline.Count;
        var vertices = new Vec3[2 * n];
        var corners = new List<int>();
        for (int i = 0; i < n; i++)
        {
            vertices[i] = new(outline[i].X, outline[i].Y, 0);
            vertices[n + i] = new(outline[i].X, outline[i].Y, 1);
            int next = (i + 1) % n;
            corners.AddRange([i, next, n + next, i, n + next, n + i]);
        }
        foreach ((int a, int b, int c) in Ears(outline)) corners.AddRange([c, b, a, n + a, n + b, n + c]);
        return new Mesh(vertices, [.. corners]);
    }

    private static IEnumerable<(int A, int B, int C)> Ears(List<Vec2> outline)
    {
        var left = Enumerable.Range(0, outline.Count).ToList();
        while (left.Count > 2)
        {
            int ear = Enumerable.Range(0, left.Count).First(i => IsEar(outline, left, i));
            int count = left.Count;
            yield return (left[(ear + count - 1) % count], left[ear], left[(ear + 1) % count]);
            left.RemoveAt(ear);
        }
    }

    private static bool IsEar(List<Vec2> outline, List<int> left, int i)
    {
        int count = left.Count;
        Vec2 a = outline[left[(i + count - 1) % count]], b = outline[left[i]], c = outline[left[(i + 1) % count]];
        if (Turn(a, b, c) <= 0) return false;
        return left.Select(k => outline[k]).Where(p => p != a && p != b && p != c)
            .All(p => Turn(a, b, p) < 0 || Turn(b, c, p) < 0 || Turn(c, a, p) < 0);
    }

    private static double Turn(Vec2 a, Vec2 b, Vec2 c) => (b.X - a.X) * (c.Y - a.Y) - (b.Y - a.Y) * (c.X - a.X);

    /// <summary>A ring of rotation about z from a closed profile of radius and height.</summary>
    private static Mesh Revolve(List<Vec2> profile)
    {
        const int Segments = 48;
        int n = profile.Count;
        var vertices = new Vec3[Segments * n];
        var corners = new List<int>();
        for (int s = 0; s < Segments; s++)
        {
            double angle = 2 * Math.PI * s / Segments;
            for (int i = 0; i < n; i++)
            {
                vertices[s * n + i] = new(profile[i].X * Math.Cos(angle), profile[i].X * Math.Sin(angle), profile[i].Y);
                int here = s * n, there = (s + 1) % Segments * n, next = (i + 1) % n;
                corners.AddRange([here + i, there + i, there + next, here + i, there + next, here + next]);
            }
        }
        return new Mesh(vertices, [.. corners]);
    }

    private static Mesh Stretch(Mesh mesh, Vec3 size)
    {
        Vec3 from = mesh.Bounds.Size, center = mesh.Bounds.Center;
        var scale = new Matrix3(
            new(size.X / from.X, 0, 0), new(0, size.Y / from.Y, 0), new(0, 0, size.Z / from.Z));
        return mesh.Transformed(scale, -scale.Apply(center));
    }
}
