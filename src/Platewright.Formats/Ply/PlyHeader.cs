using System.Globalization;
using Platewright.Formats.Reading;

namespace Platewright.Formats.Ply;

internal enum PlyEncoding
{
    Ascii,
    LittleEndian,
    BigEndian,
}

/// <summary>The kinds of number a PLY property may have.</summary>
internal enum PlyType
{
    Int8,
    UInt8,
    Int16,
    UInt16,
    Int32,
    UInt32,
    Float32,
    Float64,
}

/// <param name="CountType">Type of a list's length; null for a single number.</param>
internal sealed record PlyProperty(string Name, PlyType Type, PlyType? CountType);

internal sealed record PlyElement(string Name, long Count, List<PlyProperty> Properties);

/// <summary>What a PLY file says it holds.</summary>
internal sealed record PlyHeader(PlyEncoding Encoding, IReadOnlyList<PlyElement> Elements, int BodyOffset)
{
    public static PlyHeader Parse(ReadOnlySpan<byte> content, ReadRequest request)
    {
        var scanner = new TextScanner(content);
        if (!scanner.TryWordOnLine(out ReadOnlySpan<byte> magic) || !magic.SequenceEqual("ply"u8))
            throw request.Refuse("line 1", "it does not begin with “ply”");
        scanner.SkipLine(joined: false);
        PlyEncoding? encoding = null;
        var elements = new List<PlyElement>();
        for (int line = 2; !scanner.AtEnd; line++)
        {
            string place = $"line {line}";
            string[] words = Words(ref scanner);
            scanner.SkipLine(joined: false);
            switch (words)
            {
                case ["format", var name, ..]:
                    encoding = EncodingNamed(name) ?? throw request.Refuse(place, $"{Show(name)} is not a PLY format");
                    break;
                case ["element", var name, var count]:
                    elements.Add(new PlyElement(name, CountOf(count, place, request), []));
                    break;
                case ["property", "list", var countType, var type, var name] when elements.Count > 0:
                    elements[^1].Properties.Add(
                        new PlyProperty(name, TypeNamed(type, place, request), TypeNamed(countType, place, request)));
                    break;
                case ["property", var type, var name] when elements.Count > 0:
                    elements[^1].Properties.Add(new PlyProperty(name, TypeNamed(type, place, request), null));
                    break;
                case ["end_header"]:
                    return new PlyHeader(
                        encoding
                            ?? throw request.Refuse(place, "the header states no format"), elements, scanner.Position);
                case [] or ["comment" or "obj_info", ..]:
                    break;
                default:
                    throw request.Refuse(
                        place, $"{Show(words[0])} begins no line of a PLY header that can be understood");
            }
        }
        throw request.Refuse($"line {scanner.LineOf(scanner.Position)}", "the header has no end");
    }

    private static string[] Words(ref TextScanner scanner)
    {
        var words = new List<string>();
        while (scanner.TryWordOnLine(out ReadOnlySpan<byte> word))
        {
            words.Add(System.Text.Encoding.Latin1.GetString(word));
            if (words[0] is "comment" or "obj_info") break;
        }
        return words.ToArray();
    }

    private static PlyEncoding? EncodingNamed(string name) => name switch
    {
        "ascii" => PlyEncoding.Ascii,
        "binary_little_endian" => PlyEncoding.LittleEndian,
        "binary_big_endian" => PlyEncoding.BigEndian,
        _ => null,
    };

    private static long CountOf(string word, string place, ReadRequest request) =>
        long.TryParse(word, NumberStyles.None, CultureInfo.InvariantCulture, out long count)
            ? count
            : throw request.Refuse(place, $"{Show(word)} is not a number of elements");

    private static PlyType TypeNamed(string name, string place, ReadRequest request) => name switch
    {
        "char" or "int8" => PlyType.Int8,
        "uchar" or "uint8" => PlyType.UInt8,
        "short" or "int16" => PlyType.Int16,
        "ushort" or "uint16" => PlyType.UInt16,
        "int" or "int32" => PlyType.Int32,
        "uint" or "uint32" => PlyType.UInt32,
        "float" or "float32" => PlyType.Float32,
        "double" or "float64" => PlyType.Float64,
        _ => throw request.Refuse(place, $"{Show(name)} is not a type of number"),
    };

    private static string Show(string word) => TextScanner.Show(System.Text.Encoding.Latin1.GetBytes(word));
}
