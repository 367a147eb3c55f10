using System.IO.Compression;
using System.Text;
using Platewright.Geometry;

namespace Platewright.Demo.Writing;

/// <summary>Zipped files: 3MF packages and packs of models. Entries carry one fixed date.</summary>
internal static class Packages
{
    private static readonly DateTimeOffset Date = new(2026, 1, 1, 0, 0, 0, TimeSpan.Zero);

    /// <summary>
    /// A 3MF package by the core specification: objects side by side, base materials with their colours.
    /// </summary>
    /// <param name="wrongObject">An object id that the build asks for and nothing defines; 0 for a sound file.</param>
    public static byte[] ThreeMf(Model model, int wrongObject = 0)
    {
        StringBuilder text = new();
        string unit = model.Unit.Equals(25.4) ? "inch" : "millimeter";
        text.Append("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n");
        text.Append($"<model unit=\"{unit}\" xml:lang=\"en-US\" xmlns=\"{Core}\">\n");
        text.Append(" <resources>\n");
        Body[] coloured = [.. model.Bodies.Where(b => b.Material is not null)];
        if (coloured.Length > 0)
        {
            text.Append("  <basematerials id=\"1\">\n");
            foreach (Body body in coloured)
                text.Append($"   <base name=\"{body.Material}\" displaycolor=\"{body.Colour ?? "#808080"}\"/>\n");
            text.Append("  </basematerials>\n");
        }
        for (int i = 0; i < model.Bodies.Count; i++) AppendObject(text, model, i,
            Array.IndexOf(coloured, model.Bodies[i]));
        text.Append(" </resources>\n <build>\n");
        double x = 0;
        for (int i = 0; i < model.Bodies.Count; i++)
        {
            int id = wrongObject > 0 ? wrongObject : i + 2;
            string at = MeshText.Number(x / model.Unit);
            text.Append($"  <item objectid=\"{id}\" transform=\"1 0 0 0 1 0 0 0 1 {at} 0 0\"/>\n");
            x += model.Bodies[i].Mesh.Bounds.Size.X + 10;
        }
        text.Append(" </build>\n</model>\n");
        return Zip([
            ("[Content_Types].xml", Encoding.UTF8.GetBytes(ContentTypes)),
            ("_rels/.rels", Encoding.UTF8.GetBytes(Relationships)),
            ("3D/3dmodel.model", Encoding.UTF8.GetBytes(text.ToString()))]);
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

    private static void AppendObject(StringBuilder text, Model model, int index, int material)
    {
        Body body = model.Bodies[index];
        string look = material < 0 ? "" : $" pid=\"1\" pindex=\"{material}\"";
        text.Append($"  <object id=\"{index + 2}\" type=\"model\" name=\"{body.Name}\"{look}>\n");
        text.Append("   <mesh>\n    <vertices>\n");
        foreach (Vec3 v in body.Mesh.Vertices)
        {
            Vec3 p = v / model.Unit;
            (string x, string y, string z) = (MeshText.Number(p.X), MeshText.Number(p.Y), MeshText.Number(p.Z));
            text.Append($"     <vertex x=\"{x}\" y=\"{y}\" z=\"{z}\"/>\n");
        }
        text.Append("    </vertices>\n    <triangles>\n");
        ReadOnlySpan<int> corners = body.Mesh.Corners;
        for (int i = 0; i < corners.Length; i += 3)
            text.Append($"     <triangle v1=\"{corners[i]}\" v2=\"{corners[i + 1]}\" v3=\"{corners[i + 2]}\"/>\n");
        text.Append("    </triangles>\n   </mesh>\n  </object>\n");
    }

    /// <summary>The namespace of the 3MF core specification.</summary>
    private const string Core = "http://schemas.microsoft.com/3dmanufacturing/core/2015/02";

    private const string ContentTypes =
        """
        <?xml version="1.0" encoding="UTF-8"?>
        <Types xmlns="http://schemas.openxmlformats.org/package/2006/content-types">
         <Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/>
         <Default Extension="model" ContentType="application/vnd.ms-package.3dmanufacturing-3dmodel+xml"/>
        </Types>

        """;

    private const string Relationships =
        """
        <?xml version="1.0" encoding="UTF-8"?>
        <Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships">
         <Relationship Id="rel0" Target="/3D/3dmodel.model"
          Type="http://schemas.microsoft.com/3dmanufacturing/2013/01/3dmodel"/>
        </Relationships>

        """;
}
