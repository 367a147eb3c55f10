using System.IO.Compression;
using System.Text;

namespace Platewright.Tests.Report;

/// <summary>What lies in the elements of a report, read as the page reads it.</summary>
internal static class OpenedPage
{
    /// <summary>The study without models and pictures, as JSON.</summary>
    public static string Study(string page) => Encoding.UTF8.GetString(Unpacked(Inside(page, "study")));

    public static string Inside(string page, string id)
    {
        string opening = $"<script type=\"text/plain\" id=\"{id}\">";
        int from = page.IndexOf(opening, StringComparison.Ordinal);
        Assert.True(from >= 0, $"The page has no element {id}.");
        from += opening.Length;
        return page[from..page.IndexOf("</script>", from, StringComparison.Ordinal)];
    }

    public static byte[] Unpacked(string text)
    {
        using var gzip = new GZipStream(new MemoryStream(Convert.FromBase64String(text)), CompressionMode.Decompress);
        using var plain = new MemoryStream();
        gzip.CopyTo(plain);
        return plain.ToArray();
    }
}
