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

    /// <summary>The facets of all solids; pieces of the text are read side by side.</summary>
    public static Mesh Read(ReadOnlyMemory<byte> text, double scale, ReadRequest request, List<ModelNote> notes)
    {
        Facets[] pieces = ReadPieces(text, scale, request);
        int corners = checked(pieces.Sum(p => p.Corners.Count));
        if (corners == 0) throw request.RefuseEmpty();
        request.CheckTriangles(corners / 3, null);
        int solids = pieces.Sum(p => p.Solids);
        if (solids > 1)
            notes.Add(new ModelNote("several_solids", $"The file holds {solids} solids, read as one part."));
        var vertices = new Vec3[corners];
        int filled = 0;
        foreach (Facets piece in pieces)
        {
            piece.Corners.CopyTo(vertices, filled);
            filled += piece.Corners.Count;
        }
        var indices = new int[corners];
        for (int i = 0; i < indices.Length; i++) indices[i] = i;
        return new Mesh(vertices, indices);
    }

    private static Facets[] ReadPieces(ReadOnlyMemory<byte> text, double scale, ReadRequest request)
    {
        int[] starts = AsciiPieces.Starts(text.Span);
        var pieces = new Facets[starts.Length];
        var options = new ParallelOptions
        {
            CancellationToken = request.Cancel,
            MaxDegreeOfParallelism = Environment.ProcessorCount,
        };
        try
        {
            Parallel.For(0, starts.Length, options, i =>
            {
                int end = i + 1 < starts.Length ? starts[i + 1] : text.Length;
                pieces[i] = ReadPiece(text.Span[..end], starts[i], scale, request);
            });
            return pieces;
        }
        catch (AggregateException e) when (e.InnerExceptions.All(x => x is ModelFileException))
        {
            // From the start it is found what is wrong first, and where; a piece only knows itself.
            return [ReadPiece(text.Span, 0, scale, request)];
        }
    }

    private static Facets ReadPiece(ReadOnlySpan<byte> text, int start, double scale, ReadRequest request)
    {
        var scanner = new TextScanner(text) { Position = start };
        var corners = new List<Vec3>();
        int solids = 0;
        if (start == 0) SkipToFirstSolid(ref scanner);
        while (scanner.TryWord(out ReadOnlySpan<byte> word))
        {
            if (Is(word, "facet"u8))
            {
                ReadFacet(ref scanner, corners, scale, request);
            }
            else if (Is(word, "solid"u8))
            {
                SkipName(ref scanner);
                solids++;
            }
            else if (Is(word, "endsolid"u8))
            {
                SkipName(ref scanner);
            }
            else
            {
                throw Unexpected(ref scanner, word, "“facet” or “endsolid”", request);
            }
            if (corners.Count / 3 % FacetsBetweenCancelChecks == 0) request.Cancel.ThrowIfCancellationRequested();
        }
        return new Facets(corners, solids);
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
    private static void SkipName(ref TextScanner scanner)
    {
        int start = scanner.Position;
        ReadOnlySpan<byte> line = scanner.TakeLine();
        if (!Holds(Encoding.Latin1.GetString(line), "facet normal")) return;
        scanner.Position = start;
        int before = start;
        while (scanner.TryWord(out ReadOnlySpan<byte> word) && !Is(word, "facet"u8)) before = scanner.Position;
        scanner.Position = before;
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
            scanner.SkipLine(joined: false);
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

    /// <summary>What a piece of the text holds: three corners for each facet.</summary>
    private sealed record Facets(List<Vec3> Corners, int Solids);
}
