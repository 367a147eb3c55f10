using System.Buffers.Binary;
using System.Text;
using CsCheck;
using Platewright.Formats;
using Platewright.Geometry;

namespace Platewright.Tests.Formats;

public sealed class PlyTests
{
    private const string Header = "ply\nformat ascii 1.0\ncomment a square\nelement vertex 4\nproperty float x\n"
        + "property float y\n"
        + "property float z\nelement face 1\nproperty list uchar int vertex_indices\nend_header\n";

    private const string Body = "0 0 0\n1 0 0\n1 1 0\n0 1 0\n4 0 1 2 3\n";

    private static Vec3[] Read(byte[] bytes) =>
        TestMeshes.Positions(TestReads.Good(TestReads.Memory("a.ply", bytes)).Parts[0].Mesh);

    private static Vec3[] Read(string text) => Read(Encoding.UTF8.GetBytes(text));

    private static UnusableFile Refused(string text, string says = "") =>
        TestReads.Refused(TestReads.Text("a.ply", text), says);

    /// <summary>A mesh with extra properties before, between and after what is read.</summary>
    internal static byte[] Binary(Mesh mesh, bool bigEndian)
    {
        using var stream = new MemoryStream();
        stream.Write(Encoding.ASCII.GetBytes(
            $"ply\r\nformat binary_{(bigEndian ? "big" : "little")}_endian 1.0\r\nelement other 2\r\nproperty "
                + "list uint8 short ids\r\n"
            + $"element vertex {mesh.Vertices.Length}\r\nproperty uchar red\r\nproperty double x\r\nproperty "
            + $"float64 y\r\n"
            + "property list ushort float weights\r\nproperty double z\r\nproperty int8 flag\r\n"
            + $"element face {mesh.TriangleCount}\r\nproperty ushort group\r\nproperty list uint uint "
            + $"vertex_index\r\nend_header\n"));
        Integer(2, 1);
        Integer(-7, 2);
        Integer(8, 2);
        Integer(0, 1);
        foreach (Vec3 p in mesh.Vertices)
        {
            Integer(255, 1);
            Number(p.X);
            Number(p.Y);
            Integer(1, 2);
            Integer(0, 4);
            Number(p.Z);
            Integer(-1, 1);
        }
        for (int i = 0; i < mesh.Corners.Length; i += 3)
        {
            Integer(5, 2);
            Integer(3, 4);
            for (int k = 0; k < 3; k++) Integer(mesh.Corners[i + k], 4);
        }
        return stream.ToArray();

        void Number(double number) => Bits(BitConverter.DoubleToInt64Bits(number), 8);

        void Integer(long number, int size) => Bits(number, size);

        void Bits(long bits, int size)
        {
            for (int i = 0; i < size; i++) stream.WriteByte((byte)(bits >> (8 * (bigEndian ? size - 1 - i : i))));
        }
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void Binary_OfEitherByteOrder_KeepsEveryTriangle(bool bigEndian) => TestMeshes.Random.Sample(
        mesh => Assert.Equal(TestMeshes.Positions(mesh), Read(Binary(mesh, bigEndian))), iter: 200);

    [Fact]
    public void Ascii_Square_BecomesAFan()
    {
        Vec3 a = default, b = new(1, 0, 0), c = new(1, 1, 0), d = new(0, 1, 0);
        Assert.Equal([a, b, c, a, c, d], Read(Header + Body));
    }

    [Fact]
    public void Strips_TurnEverySecondTriangle()
    {
        string header = Header.Replace("element face 1", "element tristrips 1", StringComparison.Ordinal);
        Vec3 a = default, b = new(1, 0, 0), c = new(1, 1, 0), d = new(0, 1, 0);
        Assert.Equal([a, b, c, b, d, c, b, c, d], Read(header + "0 0 0\n1 0 0\n1 1 0\n0 1 0\n8 0 1 2 3 -1 1 2 3\n"));
    }

    [Fact]
    public void Header_OfManyRemarks_IsReadInTime()
    {
        // Were lines counted from the start for each, this would take minutes. A backslash joins no lines here.
        string remarks = string.Concat(Enumerable.Repeat("comment C:\\parts\\\n", 200_000));
        Assert.Equal(6, Read(Header.Replace("comment a square\n", remarks, StringComparison.Ordinal) + Body).Length);
    }

    [Fact]
    public void FacesBeforeVertices_AreRead()
    {
        const string text = "ply\nformat ascii 1.0\nelement face 1\nproperty list uchar int vertex_indices\n"
            + "element vertex 3\n"
            + "property float x\nproperty float y\nproperty float z\nend_header\n3 0 1 2\n0 0 0\n1 0 0\n0 1 0\n";
        Assert.Equal(3, Read(text).Length);
    }

    [Theory]
    [InlineData("0 1 2 3\n", "0 1 2 4\n", "no vertex 4")]
    [InlineData("0 1 2 3\n", "0 1 2\n", "ends before")]
    [InlineData("4 0 1 2 3", "-1", "list is longer")]
    [InlineData("4 0 1 2 3", "99999999 0", "list is longer")]
    [InlineData("4 0 1 2 3", "3 0 1.5 2", "not a whole number")]
    [InlineData("1 1 0\n", "1 1,0 0\n", "decimal point")]
    [InlineData("1 1 0\n", "1 nan 0\n", "not a number")]
    [InlineData("vertex 4", "vertex 400000000000", "ends before")]
    [InlineData("vertex 4", "vertex -4", "number of elements")]
    [InlineData("float x", "quad x", "type of number")]
    [InlineData("float x", "float u", "lack x, y or z")]
    [InlineData("format ascii", "format bascii", "PLY format")]
    [InlineData("end_header\n", "", "begins no line")]
    [InlineData("face 1", "face 0", "no triangles")]
    public void BadText_IsRefused(string old, string bad, string says)
    {
        string text = (Header + Body).Replace(old, bad, StringComparison.Ordinal);
        Refused(text, says: says);
    }

    [Fact]
    public void Binary_NotANumber_IsRefused()
    {
        byte[] bytes = Binary(TestMeshes.Box(1, 2, 3), bigEndian: false);
        int body = bytes.AsSpan().IndexOf("end_header\n"u8) + "end_header\n".Length + 1 + 4 + 1;
        BinaryPrimitives.WriteDoubleLittleEndian(bytes.AsSpan(body + 1), double.NaN);
        UnusableFile refused = TestReads.Refused(TestReads.Memory("a.ply", bytes));
        Assert.Contains("not a number", refused.Message, StringComparison.Ordinal);
    }
}
