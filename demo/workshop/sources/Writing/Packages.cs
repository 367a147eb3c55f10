using System.IO.Compression;
using System.Text;
using Platewright.Formats.ThreeMf;

namespace Platewright.Demo.Writing;

/// <summary>Zipped files: 3MF packages and packs of models. Entries carry one fixed date.</summary>
internal static class Packages
{
    private const string ModelPart = "3D/3dmodel.model";

    private static readonly DateTimeOffset Date = new(2026, 1, 1, 0, 0, 0, TimeSpan.Zero);

    public static byte[] ThreeMf(Model model)
    {
        using MemoryStream stream = new();
        ThreeMfWriter.Write(stream,
            [new BuildItem(model.Drawn) { Name = model.Name, Material = model.Material, Colour = model.Colour }]);
        byte[] package = stream.ToArray();
        if (model.Origin is { } origin)
        {
            package = Edited(package, "<resources>",
                $"<metadata name=\"Designer\">{origin.MadeBy}</metadata>" +
                $"<metadata name=\"LicenseTerms\">{origin.Licence}</metadata><resources>");
        }
        return model.Unit.Equals(1) ? package : Edited(package, "unit=\"millimeter\"", "unit=\"inch\"");
    }

    /// <summary>
    /// The package with a text of its model part replaced by another, which our writer would not write.
    /// </summary>
    public static byte[] Edited(byte[] package, string from, string to)
    {
        using ZipArchive archive = new(new MemoryStream(package));
        return Zip([.. archive.Entries.Select(entry =>
        {
            using StreamReader reader = new(entry.Open());
            string text = reader.ReadToEnd();
            if (entry.FullName == ModelPart) text = text.Replace(from, to, StringComparison.Ordinal);
            return (entry.FullName, Encoding.UTF8.GetBytes(text));
        })]);
    }

    public static byte[] Zip(IEnumerable<(string Path, byte[] Content)> files)
    {
        using MemoryStream stream = new();
        using (ZipArchive archive = new(stream, ZipArchiveMode.Create, leaveOpen: true))
            foreach ((string path, byte[] content) in files)
            {
                ZipArchiveEntry entry = archive.CreateEntry(path, CompressionLevel.SmallestSize);
                entry.LastWriteTime = Date;
                using Stream into = entry.Open();
                into.Write(content);
            }
        return stream.ToArray();
    }
}
