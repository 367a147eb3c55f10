using System.Text;

namespace Platewright.Formats.Stl;

/// <summary>Cuts an ASCII STL text where a line begins with a facet: there every piece makes sense by itself.</summary>
internal static class AsciiPieces
{
    private const int LeastBytes = 1 << 20;

    /// <summary>Where the pieces begin; the first at 0.</summary>
    public static int[] Starts(ReadOnlySpan<byte> text)
    {
        var starts = new List<int> { 0 };
        int position = LeastBytes;
        while (position < text.Length)
        {
            int lineEnd = text[position..].IndexOf((byte)'\n');
            if (lineEnd < 0) break;
            position += lineEnd + 1;
            ReadOnlySpan<byte> line = text[position..].TrimStart(" \t"u8);
            if (line.Length < 6 || !Ascii.EqualsIgnoreCase(line[..5], "facet"u8) || line[5] > ' ') continue;
            starts.Add(position);
            position += LeastBytes;
        }
        return starts.ToArray();
    }
}
