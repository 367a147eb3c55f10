using System.Buffers.Binary;
using System.Text.Json;
using Platewright.Study.Documents;

namespace Platewright.Report;

/// <summary>
/// A light mesh in the page. Neighbouring points lie close together, so each number is kept as its difference to the one
/// before of its kind (modulo 2^16), all low bytes before all high bytes: gzip then needs little more than half as much.
/// </summary>
/// <remarks>
/// Two uint32 (little-endian): bytes of the heading, bytes of the points. Then the heading, which is the document as JSON
/// with both long texts left empty, then points, then corners.
/// </remarks>
internal static class PackedModel
{
    private const int Lengths = 2 * sizeof(uint);

    /// <summary>Differences of points run along each axis, those of corners from one to the next.</summary>
    private const int AxesOfPoints = 3, AxesOfCorners = 1;

    public static string Of(ModelDocument model)
    {
        byte[] heading = JsonSerializer.SerializeToUtf8Bytes(model with { Positions = "", Corners = "" }, PageJson.Options);
        byte[] points = Spread(Convert.FromBase64String(model.Positions), AxesOfPoints);
        byte[] corners = Spread(Convert.FromBase64String(model.Corners), AxesOfCorners);
        var lengths = new byte[Lengths];
        BinaryPrimitives.WriteUInt32LittleEndian(lengths, (uint)heading.Length);
        BinaryPrimitives.WriteUInt32LittleEndian(lengths.AsSpan(sizeof(uint)), (uint)points.Length);
        return PackedText.Of([.. lengths, .. heading, .. points, .. corners]);
    }

    /// <param name="numbers">Little-endian uint16.</param>
    /// <param name="axes">How far back the number lies that each is held against.</param>
    private static byte[] Spread(byte[] numbers, int axes)
    {
        int count = numbers.Length / sizeof(ushort);
        var spread = new byte[numbers.Length];
        for (int i = 0; i < count; i++)
        {
            int difference = unchecked((ushort)(NumberAt(i) - (i < axes ? 0 : NumberAt(i - axes))));
            spread[i] = (byte)(difference & byte.MaxValue);
            spread[count + i] = (byte)(difference >> 8);
        }
        return spread;

        int NumberAt(int i) => BinaryPrimitives.ReadUInt16LittleEndian(numbers.AsSpan(i * sizeof(ushort)));
    }
}
