using System.Text.Json;

namespace Platewright.Verify;

/// <summary>One proof as read from its file: plain numbers, nothing believed yet.</summary>
internal sealed class ProofEntry
{
    private ProofEntry(JsonElement e)
    {
        File = Text(e, "file");
        Part = e.TryGetProperty("part", out JsonElement part) && part.ValueKind == JsonValueKind.String ? part.GetString() : null;
        Machine = Text(e, "machine");
        Vertices = [.. Member(e, "vertices_mm").EnumerateArray().Select(ReadPoint)];
        Shrinkage = Number(e, "shrinkage");
        Volume = new Volume(Member(e, "volume"));
        LowerScale = Number(e, "lower_scale");
        UpperScale = Number(e, "upper_scale");
        JsonElement witness = Member(e, "witness");
        WitnessScale = Number(witness, "scale");
        WitnessRotation = Numbers(Member(witness, "rotation"), 4);
        WitnessTranslation = ReadPoint(Member(witness, "translation_mm"));
        JsonElement bound = Member(e, "bound");
        SlabNormal = bound.TryGetProperty("slab_normal", out JsonElement slab) && slab.ValueKind == JsonValueKind.Array
            ? ReadPoint(slab)
            : null;
        Charts = [.. Member(bound, "charts").EnumerateArray().Select(c => c.GetInt32())];
        Cut = Text(bound, "cut");
        Cells = Text(bound, "cells");
        Closings = [.. Member(bound, "closings").EnumerateArray().Select(c => c.EnumerateArray().Select(x => new ContactEntry(x)).ToArray())];
        if (Vertices.Length == 0) throw new ProofException("the proof has no vertices");
        if (!(Shrinkage >= 0)) throw new ProofException("the shrinkage is negative");
        foreach (ContactEntry contact in Closings.SelectMany(c => c))
            if (contact.Vertices.Any(v => v < 0 || v >= Vertices.Length))
                throw new ProofException("a contact names a vertex that does not exist");
    }

    public string File { get; }

    public string? Part { get; }

    public string Machine { get; }

    public Point[] Vertices { get; }

    public double Shrinkage { get; }

    public Volume Volume { get; }

    public double LowerScale { get; }

    public double UpperScale { get; }

    public double WitnessScale { get; }

    public double[] WitnessRotation { get; }

    public Point WitnessTranslation { get; }

    public Point? SlabNormal { get; }

    public int[] Charts { get; }

    public string Cut { get; }

    public string Cells { get; }

    public ContactEntry[][] Closings { get; }

    public static ProofEntry Read(JsonElement e)
    {
        try
        {
            return new ProofEntry(e);
        }
        catch (Exception error) when (error is InvalidOperationException or FormatException)
        {
            throw new ProofException($"an entry is not of the expected kind: {error.Message}", error);
        }
    }

    internal static JsonElement Member(JsonElement e, string key) =>
        e.ValueKind == JsonValueKind.Object && e.TryGetProperty(key, out JsonElement value)
            ? value
            : throw new ProofException($"the key \"{key}\" is missing");

    internal static double Number(JsonElement e, string key) => Member(e, key).GetDouble();

    internal static string Text(JsonElement e, string key) =>
        Member(e, key).GetString() ?? throw new ProofException($"the key \"{key}\" has no text");

    internal static double[] Numbers(JsonElement e, int count)
    {
        double[] numbers = [.. e.EnumerateArray().Select(x => x.GetDouble())];
        return numbers.Length == count ? numbers : throw new ProofException($"expected {count} numbers, found {numbers.Length}");
    }

    internal static Point ReadPoint(JsonElement e)
    {
        double[] p = Numbers(e, 3);
        return new Point(p[0], p[1], p[2]);
    }
}

/// <summary>Vertices pressed against the volume's walls; the last normal makes them cancel.</summary>
internal sealed class ContactEntry
{
    public ContactEntry(JsonElement e)
    {
        Weight = ProofEntry.Number(e, "weight");
        Vertices = [.. ProofEntry.Member(e, "vertices").EnumerateArray().Select(v => v.GetInt32())];
        List<Point> normals = [.. ProofEntry.Member(e, "normals").EnumerateArray().Select(ProofEntry.ReadPoint)];
        if (Vertices.Length < 2 || normals.Count != Vertices.Length - 1)
            throw new ProofException("a contact needs one normal fewer than vertices, and two vertices at least");
        if (!(Weight >= 0)) throw new ProofException("a contact has a negative weight");
        Point sum = normals[0];
        for (int i = 1; i < normals.Count; i++) sum += normals[i];
        normals.Add(-sum);
        Normals = [.. normals];
    }

    public double Weight { get; }

    public int[] Vertices { get; }

    public Point[] Normals { get; }
}
