using System.IO.Compression;
using System.Text;
using System.Xml;

namespace Platewright.Formats.ThreeMf;

/// <summary>Writes 3MF (core specification, mm): the same items give the same bytes.</summary>
public static class ThreeMfWriter
{
    private const string ModelPart = "3D/3dmodel.model";

    /// <summary>Zip archives need a time; the earliest they can state keeps the bytes the same on every day.</summary>
    private static readonly DateTimeOffset NoTime = new(1980, 1, 1, 0, 0, 0, TimeSpan.Zero);

    /// <summary>Writes a package with one build item for each of the items.</summary>
    /// <exception cref="ArgumentException">
    /// No items, an item without triangles or with a flat transform, or a colour that is not #RRGGBB.
    /// </exception>
    public static void Write(Stream stream, IReadOnlyList<BuildItem> items, string? title = null)
    {
        Check(items);
        using var archive = new ZipArchive(stream, ZipArchiveMode.Create, leaveOpen: true);
        WriteXml(archive, "[Content_Types].xml", xml =>
        {
            xml.WriteStartElement("Types", Namespaces.ContentTypes);
            WriteEmpty(xml, "Default", ("Extension", "rels"), ("ContentType", Namespaces.RelationshipsContentType));
            WriteEmpty(xml, "Default", ("Extension", "model"), ("ContentType", Namespaces.ModelContentType));
            xml.WriteEndElement();
        });
        WriteXml(archive, "_rels/.rels", xml =>
        {
            xml.WriteStartElement("Relationships", Namespaces.PackageRelationships);
            WriteEmpty(
                xml, "Relationship",
                ("Target", "/" + ModelPart), ("Id", "model"), ("Type", Namespaces.ModelRelationship));
            xml.WriteEndElement();
        });
        WriteXml(archive, ModelPart, xml => new ThreeMfModelWriter(xml).Write(items, title));
    }

    private static void Check(IReadOnlyList<BuildItem> items)
    {
        if (items.Count == 0) throw new ArgumentException("There are no items to write.", nameof(items));
        foreach (BuildItem item in items)
        {
            if (item.Mesh.TriangleCount == 0)
                throw new ArgumentException($"The item “{item.Name}” has no triangles.", nameof(items));
            if (item.Linear.Determinant == 0)
                throw new ArgumentException($"The transform of the item “{item.Name}” is flat.", nameof(items));
            if (item.Colour is { } colour && (colour.Length != 7 || Reading.Colours.FromHex(colour) is null))
                throw new ArgumentException($"The colour “{colour}” is not #RRGGBB.", nameof(items));
        }
    }

    private static void WriteXml(ZipArchive archive, string part, Action<XmlWriter> write)
    {
        ZipArchiveEntry entry = archive.CreateEntry(part, CompressionLevel.Optimal);
        entry.LastWriteTime = NoTime;
        using Stream stream = entry.Open();
        var settings = new XmlWriterSettings { Encoding = new UTF8Encoding(false), Indent = true, NewLineChars = "\n" };
        using var xml = XmlWriter.Create(stream, settings);
        write(xml);
    }

    private static void WriteEmpty(XmlWriter xml, string element, params (string Name, string Value)[] attributes)
    {
        xml.WriteStartElement(element);
        foreach ((string name, string value) in attributes) xml.WriteAttributeString(name, value);
        xml.WriteEndElement();
    }
}
