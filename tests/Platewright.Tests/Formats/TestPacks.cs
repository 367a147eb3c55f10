using System.IO.Compression;
using System.Text;

namespace Platewright.Tests.Formats;

/// <summary>Zip archives and 3MF packages made in memory.</summary>
internal static class TestPacks
{
    public const string Core = "http://schemas.microsoft.com/3dmanufacturing/core/2015/02";

    private const string Relationships =
        """
        <?xml version="1.0" encoding="UTF-8"?>
        <Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships">
          <Relationship Target="/3D/model.model" Id="r"
            Type="http://schemas.microsoft.com/3dmanufacturing/2013/01/3dmodel"/>
        </Relationships>
        """;

    /// <summary>Four vertices and four triangles, to be put into an object.</summary>
    public const string Tetrahedron =
        """
        <mesh><vertices><vertex x="0" y="0" z="0"/><vertex x="1" y="0" z="0"/><vertex x="0" y="1" z="0"/>
        <vertex x="0" y="0" z="1"/></vertices><triangles><triangle v1="0" v2="2" v3="1"/>
        <triangle v1="0" v2="1" v3="3"/><triangle v1="1" v2="2" v3="3"/>
        <triangle v1="2" v2="0" v3="3"/></triangles></mesh>
        """;

    public static byte[] Zip(params (string Name, byte[] Content)[] entries)
    {
        using var stream = new MemoryStream();
        using (var archive = new ZipArchive(stream, ZipArchiveMode.Create, leaveOpen: true))
        {
            foreach ((string name, byte[] content) in entries)
            {
                using Stream entry = archive.CreateEntry(name).Open();
                entry.Write(content);
            }
        }
        return stream.ToArray();
    }

    public static byte[] Bytes(string text) => Encoding.UTF8.GetBytes(text);

    /// <summary>A package whose root model part is the text, with further parts beside it.</summary>
    public static byte[] ThreeMf(string model, params (string Name, string Text)[] more) => Zip(
        [
            ("_rels/.rels", Bytes(Relationships)),
            ("3D/model.model", Bytes(model)),
            .. more.Select(m => (m.Name, Bytes(m.Text))),
        ]);

    /// <summary>A model part with these resources and this build.</summary>
    public static string Model(string resources, string build, string attributes = "") =>
        $"""<model xmlns="{Core}" {attributes}><resources>{resources}</resources><build>{build}</build></model>""";
}
