using System.Globalization;
using System.Text;
using System.Xml;
using Platewright.Geometry;

namespace Platewright.Formats.ThreeMf;

/// <summary>The XML of the one model part of a package we write.</summary>
internal sealed class ThreeMfModelWriter(XmlWriter xml)
{
    /// <summary>Of a material of no stated colour.</summary>
    private const string Grey = "#808080";

    private readonly Dictionary<Look, PropertyReference> _properties = [];
    private int _latestId;

    public void Write(IReadOnlyList<BuildItem> items, string? title)
    {
        xml.WriteStartElement("model", Namespaces.Core);
        xml.WriteAttributeString("unit", "millimeter");
        xml.WriteAttributeString("xml", "lang", null, "en");
        xml.WriteAttributeString("xmlns", "m", null, Namespaces.Materials);
        if (!string.IsNullOrWhiteSpace(title)) WriteMetadata("Title", title);

        xml.WriteStartElement("resources");
        WriteProperties(items);
        var objects = new Dictionary<(Mesh, string?, Look), int>();
        foreach (BuildItem item in items)
        {
            (Mesh, string?, Look) key = (item.Mesh, item.Name, LookOf(item));
            if (!objects.ContainsKey(key)) objects[key] = WriteObject(item);
        }
        xml.WriteEndElement();

        xml.WriteStartElement("build");
        foreach (BuildItem item in items) WriteItem(item, objects[(item.Mesh, item.Name, LookOf(item))]);
        xml.WriteEndElement();
        xml.WriteEndElement();
    }

    private static Look LookOf(BuildItem item) => new(item.Material, item.Colour);

    private void WriteMetadata(string name, string value)
    {
        xml.WriteStartElement("metadata");
        xml.WriteAttributeString("name", name);
        xml.WriteString(Clean(value));
        xml.WriteEndElement();
    }

    /// <summary>
    /// Materials become base materials; a colour without one needs the group of the materials extension.
    /// </summary>
    private void WriteProperties(IReadOnlyList<BuildItem> items)
    {
        Look[] looks = items.Select(LookOf).Distinct().ToArray();
        Look[] materials = looks.Where(l => l.Material is not null).ToArray();
        Look[] colours = looks.Where(l => l.Material is null && l.Colour is not null).ToArray();
        WriteGroup(materials, null, "basematerials", look => WriteBase(look));
        WriteGroup(colours, Namespaces.Materials, "colorgroup", look =>
        {
            xml.WriteStartElement("color", Namespaces.Materials);
            xml.WriteAttributeString("color", look.Colour);
            xml.WriteEndElement();
        });
    }

    private void WriteGroup(Look[] looks, string? xmlNamespace, string element, Action<Look> write)
    {
        if (looks.Length == 0) return;
        int id = ++_latestId;
        xml.WriteStartElement(element, xmlNamespace ?? Namespaces.Core);
        xml.WriteAttributeString("id", Text(id));
        for (int i = 0; i < looks.Length; i++)
        {
            write(looks[i]);
            _properties[looks[i]] = new PropertyReference(id, i);
        }
        xml.WriteEndElement();
    }

    private void WriteBase(Look look)
    {
        xml.WriteStartElement("base");
        xml.WriteAttributeString("name", Clean(look.Material!));
        xml.WriteAttributeString("displaycolor", look.Colour ?? Grey);
        xml.WriteEndElement();
    }

    private int WriteObject(BuildItem item)
    {
        int id = ++_latestId;
        xml.WriteStartElement("object");
        xml.WriteAttributeString("id", Text(id));
        xml.WriteAttributeString("type", "model");
        if (!string.IsNullOrWhiteSpace(item.Name)) xml.WriteAttributeString("name", Clean(item.Name));
        if (_properties.TryGetValue(LookOf(item), out PropertyReference property))
        {
            xml.WriteAttributeString("pid", Text(property.Group));
            xml.WriteAttributeString("pindex", Text(property.Index));
        }
        WriteMesh(item.Mesh);
        xml.WriteEndElement();
        return id;
    }

    private void WriteMesh(Mesh mesh)
    {
        xml.WriteStartElement("mesh");
        xml.WriteStartElement("vertices");
        foreach (Vec3 p in mesh.Vertices)
        {
            xml.WriteStartElement("vertex");
            xml.WriteAttributeString("x", Text(p.X));
            xml.WriteAttributeString("y", Text(p.Y));
            xml.WriteAttributeString("z", Text(p.Z));
            xml.WriteEndElement();
        }
        xml.WriteEndElement();
        xml.WriteStartElement("triangles");
        ReadOnlySpan<int> corners = mesh.Corners;
        for (int i = 0; i < corners.Length; i += 3)
        {
            // Corners must differ (core specification, section 4.1.4.1); without an area there is nothing to lose.
            if (corners[i] == corners[i + 1] || corners[i + 1] == corners[i + 2] || corners[i + 2] == corners[i])
                continue;
            xml.WriteStartElement("triangle");
            xml.WriteAttributeString("v1", Text(corners[i]));
            xml.WriteAttributeString("v2", Text(corners[i + 1]));
            xml.WriteAttributeString("v3", Text(corners[i + 2]));
            xml.WriteEndElement();
        }
        xml.WriteEndElement();
        xml.WriteEndElement();
    }

    private void WriteItem(BuildItem item, int objectId)
    {
        xml.WriteStartElement("item");
        xml.WriteAttributeString("objectid", Text(objectId));
        if (item.Linear != Matrix3.Identity || item.Offset != default)
        {
            // Row vectors: the columns of our matrix become the rows of theirs.
            Matrix3 t = item.Linear.Transposed();
            double[] numbers =
            [
                t.Row0.X, t.Row0.Y, t.Row0.Z, t.Row1.X, t.Row1.Y, t.Row1.Z, t.Row2.X, t.Row2.Y, t.Row2.Z,
                item.Offset.X, item.Offset.Y, item.Offset.Z,
            ];
            xml.WriteAttributeString("transform", string.Join(' ', numbers.Select(Text)));
        }
        xml.WriteEndElement();
    }

    private static string Text(int number) => number.ToString(CultureInfo.InvariantCulture);

    /// <summary>The shortest text that reads back as the same number.</summary>
    private static string Text(double number) => number.ToString("R", CultureInfo.InvariantCulture);

    /// <summary>Characters that XML cannot hold become question marks.</summary>
    private static string Clean(string text)
    {
        var clean = new StringBuilder(text.Length);
        foreach (Rune rune in text.EnumerateRunes())
        {
            bool allowed = rune.Value > 0xFFFF || XmlConvert.IsXmlChar((char)rune.Value);
            clean.Append(allowed ? rune.ToString() : "?");
        }
        return clean.ToString();
    }
}
