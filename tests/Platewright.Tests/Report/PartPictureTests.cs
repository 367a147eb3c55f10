using System.Buffers.Binary;
using System.IO.Compression;
using Platewright.Geometry;
using Platewright.Study.Pictures;

namespace Platewright.Tests.Report;

public sealed class PartPictureTests
{
    [Fact]
    public void Of_Cube_ShowsThreeFacesOnNothing()
    {
        (byte Grey, byte Opacity)[] pixels = Decode(PartPicture.Of(FixtureShapes.Make("box", new(20, 20, 20))));

        Assert.Equal(0, pixels[0].Opacity);
        Assert.Equal(255, pixels[PartPicture.EdgePixels / 2 * (PartPicture.EdgePixels + 1)].Opacity);
        // Seen from a corner, a cube shows three faces: three greys make up most of the picture.
        int mostOfIt = pixels.Count(p => p.Opacity == 255) * 8 / 10;
        var greys = pixels.Where(p => p.Opacity == 255).CountBy(p => p.Grey).OrderByDescending(g => g.Value).Take(3).ToList();
        Assert.Equal(3, greys.Count);
        Assert.True(greys.Sum(g => g.Value) > mostOfIt);
    }

    [Fact]
    public void Of_SameMeshTwice_GivesTheSameBytes()
    {
        byte[] Draw() => PartPicture.Of(FixtureShapes.Make("gear", new(60, 60, 9)));
        Assert.Equal(Draw(), Draw());
    }

    [Fact]
    public void Of_MeshWithoutTriangles_IsEmpty() =>
        Assert.All(Decode(PartPicture.Of(new Mesh([], []))), p => Assert.Equal(0, p.Opacity));

    [Fact]
    public void OfBox_Sizes_DrawsDashesAndLeavesFacesOpen()
    {
        (byte Grey, byte Opacity)[] pixels = Decode(PartPicture.OfBox(new(265, 240, 310)));
        int drawn = pixels.Count(p => p.Opacity > 0);
        Assert.InRange(drawn, PartPicture.EdgePixels, pixels.Length / 8);
    }

    [Fact]
    public void OfBox_SizeOfZero_IsRefused() =>
        Assert.Throws<ArgumentException>(() => PartPicture.OfBox(new(10, 0, 10)));

    /// <summary>Undoes the one kind of PNG we write: colour type 4, no filter (ISO/IEC 15948, clause 9).</summary>
    private static (byte Grey, byte Opacity)[] Decode(byte[] png)
    {
        int at = 8;
        byte[] packed = [];
        while (at < png.Length)
        {
            int length = BinaryPrimitives.ReadInt32BigEndian(png.AsSpan(at));
            if (png.AsSpan(at + 4, 4).SequenceEqual("IDAT"u8)) packed = png[(at + 8)..(at + 8 + length)];
            at += 12 + length;
        }
        using var zlib = new ZLibStream(new MemoryStream(packed), CompressionMode.Decompress);
        using var rows = new MemoryStream();
        zlib.CopyTo(rows);
        byte[] raw = rows.ToArray();
        int edge = PartPicture.EdgePixels, stride = 2 * edge + 1;
        Assert.Equal(stride * edge, raw.Length);
        var pixels = new (byte, byte)[edge * edge];
        for (int y = 0; y < edge; y++)
        {
            Assert.Equal(0, raw[y * stride]);
            for (int x = 0; x < edge; x++) pixels[y * edge + x] = (raw[y * stride + 1 + 2 * x], raw[y * stride + 2 + 2 * x]);
        }
        return pixels;
    }
}
