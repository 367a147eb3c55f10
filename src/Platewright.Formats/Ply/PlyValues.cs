using Platewright.Formats.Reading;

namespace Platewright.Formats.Ply;

/// <summary>The numbers of a PLY body, one after the other.</summary>
internal interface IPlyValues
{
    /// <summary>Where the next number stands, for complaints.</summary>
    string Place { get; }

    /// <summary>Most numbers of the type that can still follow.</summary>
    long MostLeft(PlyType type);

    /// <exception cref="ModelFileException">The file ends, or what follows is no number.</exception>
    double Next(PlyType type);
}

/// <summary>Numbers as words.</summary>
internal ref struct PlyTextValues : IPlyValues
{
    private readonly ReadRequest _request;
    private readonly int _length;
    private TextScanner _scanner;

    public PlyTextValues(ReadOnlySpan<byte> content, int offset, ReadRequest request)
    {
        _scanner = new TextScanner(content) { Position = offset };
        _length = content.Length;
        _request = request;
    }

    public readonly string Place => $"line {_scanner.LineOf(_scanner.Position)}";

    /// <summary>Every word but the last takes two bytes.</summary>
    public readonly long MostLeft(PlyType type) => (_length - _scanner.Position + 1) / 2;

    public double Next(PlyType type)
    {
        if (!_scanner.TryWord(out ReadOnlySpan<byte> word))
            throw _request.Refuse(Place, "the file ends before its last element");
        if (DecimalNumber.TryParse(word, out double number)) return number;
        throw TextNumber.Refusal(word, Place, _request);
    }
}

/// <summary>Numbers as bytes, in either order.</summary>
internal ref struct PlyBinaryValues : IPlyValues
{
    private readonly ReadOnlySpan<byte> _content;
    private readonly bool _bigEndian;
    private readonly ReadRequest _request;
    private int _position;

    public PlyBinaryValues(ReadOnlySpan<byte> content, int offset, bool bigEndian, ReadRequest request)
    {
        _content = content;
        _position = offset;
        _bigEndian = bigEndian;
        _request = request;
    }

    public readonly string Place => $"byte {_position}";

    public readonly long MostLeft(PlyType type) => (_content.Length - _position) / PlyTypes.SizeOf(type);

    public double Next(PlyType type)
    {
        int size = PlyTypes.SizeOf(type);
        if (size > _content.Length - _position) throw _request.Refuse(Place, "the file ends before its last element");
        ulong bits = 0;
        for (int i = 0; i < size; i++)
            bits = (bits << 8) | _content[_bigEndian ? _position + i : _position + size - 1 - i];
        _position += size;
        return type switch
        {
            PlyType.Int8 => (sbyte)bits,
            PlyType.UInt8 => (byte)bits,
            PlyType.Int16 => (short)bits,
            PlyType.UInt16 => (ushort)bits,
            PlyType.Int32 => (int)bits,
            PlyType.UInt32 => (uint)bits,
            PlyType.Float32 => BitConverter.UInt32BitsToSingle((uint)bits),
            _ => BitConverter.UInt64BitsToDouble(bits),
        };
    }
}

/// <summary>Sizes of the types.</summary>
internal static class PlyTypes
{
    /// <summary>Bytes of one number.</summary>
    public static int SizeOf(PlyType type) => type switch
    {
        PlyType.Int8 or PlyType.UInt8 => 1,
        PlyType.Int16 or PlyType.UInt16 => 2,
        PlyType.Float64 => 8,
        _ => 4,
    };
}
