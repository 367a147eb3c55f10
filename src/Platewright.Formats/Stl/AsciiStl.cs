using System.Text;
using Platewright.Formats.Reading;
using Platewright.Geometry;

namespace Platewright.Formats.Stl;

/// <summary>ASCII STL: words in any spacing and case; normals and names are passed over.</summary>
internal static class AsciiStl
{
    private const int FacetsBetweenCancelChecks = 1 << 14;

    /// <summary>Whether the start of a file is text that speaks of facets or of a solid.</summary>
    public static bool LooksLike(ReadOnlySpan<byte> start)
    {
        foreach (byte b in start)
        {
            if (b == 0) return false;
        }
        string text = Encoding.Latin1.GetString(start);
        return text.TrimStart('\u00EF', '\u00BB', '\u00BF', ' ', '\t', '\r', '\n')
                .StartsWith("solid", StringComparison.OrdinalIgnoreCase)
            || (Holds(text, "facet") && Holds(text, "vertex"));
    }

    public static Mesh Read(ReadOnlySpan<byte> text, double scale, ReadRequest request, List<ModelNote> notes)
    {
        var scanner = new TextScanner(text);
        var vertices = new List<Vec3>();
        var solids = new List<string>();
        SkipToFirstSolid(ref scanner);
        while (scanner.TryWord(out ReadOnlySpan<byte> word))
        {
            if (Is(word, "facet"u8)) ReadFacet(ref scanner, vertices, scale, request);
            else if (Is(word, "solid"u8)) solids.Add(TakeName(ref scanner));
            else if (Is(word, "endsolid"u8)) TakeName(ref scanner);
            else throw Unexpected(ref scanner, word, "“facet” or “endsolid”", request);

            if (vertices.Count / 3 % FacetsBetweenCancelChecks == 0) request.Cancel.ThrowIfCancellationRequested();
        }
        if (vertices.Count == 0) throw request.RefuseEmpty();
        if (solids.Count > 1)
            notes.Add(new ModelNote("several_solids", $"The file holds {solids.Count} solids, read as one part."));
        var corners = new int[vertices.Count];
        for (int i = 0; i < corners.Length; i++) corners[i] = i;
        return new Mesh(vertices.ToArray(), corners);
    }

    private static void ReadFacet(ref TextScanner scanner, List<Vec3> vertices, double scale, ReadRequest request)
    {
        Expect(ref scanner, "normal"u8, request);
        // Degenerate facets have normals such as "-nan(ind)"; the corners say it better.
        for (int i = 0; i < 3; i++) scanner.TryWord(out _);
        Expect(ref scanner, "outer"u8, request);
        Expect(ref scanner, "loop"u8, request);
        for (int i = 0; i < 3; i++)
        {
            Expect(ref scanner, "vertex"u8, request);
            vertices.Add(new Vec3(
                TextNumber.Coordinate(ref scanner, scale, request),
                TextNumber.Coordinate(ref scanner, scale, request),
                TextNumber.Coordinate(ref scanner, scale, request)));
        }
        Expect(ref scanner, "endloop"u8, request);
        Expect(ref scanner, "endfacet"u8, request);
        if (vertices.Count > 3L * request.Limits.Triangles)
            request.CheckTriangles(vertices.Count / 3, $"line {scanner.LineOf(scanner.Position)}");
    }

    /// <summary>A name ends with its line, or where the first facet begins on the same line.</summary>
    private static string TakeName(ref TextScanner scanner)
    {
        int start = scanner.Position;
        string line = Encoding.Latin1.GetString(scanner.TakeLine());
        int facet = line.IndexOf("facet normal", StringComparison.OrdinalIgnoreCase);
        if (facet < 0) return line;
        scanner.Position = start;
        ReadOnlySpan<byte> word = default;
        int before = start;
        while (!Is(word, "facet"u8))
        {
            before = scanner.Position;
            if (!scanner.TryWord(out word)) break;
        }
        scanner.Position = before;
        return line[..facet].Trim();
    }

    /// <summary>Passes over a byte order mark or lines of remarks before the first solid or facet.</summary>
    private static void SkipToFirstSolid(ref TextScanner scanner)
    {
        while (!scanner.AtEnd)
        {
            int start = scanner.Position;
            scanner.TryWord(out ReadOnlySpan<byte> word);
            bool afterMark = word.EndsWith("solid"u8) && word.StartsWith("\uFEFF"u8);
            if (Is(word, "facet"u8) || Is(word, "solid"u8) || afterMark)
            {
                scanner.Position = afterMark ? start + 3 : start;
                return;
            }
            scanner.SkipLine();
        }
    }

    private static void Expect(ref TextScanner scanner, ReadOnlySpan<byte> expected, ReadRequest request)
    {
        bool found = scanner.TryWord(out ReadOnlySpan<byte> word);
        if (!found || !Is(word, expected)) throw Unexpected(ref scanner, word, TextScanner.Show(expected), request);
    }

    private static ModelFileException Unexpected(
        ref TextScanner scanner, ReadOnlySpan<byte> word, string expected, ReadRequest request)
    {
        string place = $"line {scanner.LineOf(scanner.Position)}";
        return word.IsEmpty
            ? request.Refuse(place, $"the file ends where {expected} should follow")
            : request.Refuse(place, $"{TextScanner.Show(word)} stands where {expected} should");
    }

    private static bool Is(ReadOnlySpan<byte> word, ReadOnlySpan<byte> expected) =>
        word.SequenceEqual(expected) || Ascii.EqualsIgnoreCase(word, expected);

    private static bool Holds(string text, string word) => text.Contains(word, StringComparison.OrdinalIgnoreCase);
}
