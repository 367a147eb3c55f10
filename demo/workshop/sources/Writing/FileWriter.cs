using Platewright.Formats.Stl;

namespace Platewright.Demo.Writing;

/// <summary>The bytes of a model's file.</summary>
public static class FileWriter
{
    public static byte[] Bytes(Model model) => model.Kind switch
    {
        FileKind.StlBinary => BinaryStl(model),
        FileKind.StlText => StlText.Bytes(model),
        FileKind.Obj => Obj.Bytes(model),
        FileKind.PlyText => Ply.Text(model),
        FileKind.PlyBinary => Ply.Binary(model),
        FileKind.ThreeMf => Packages.ThreeMf(model),
        FileKind.Amf => Amf.Bytes(model),
        _ => throw new ArgumentOutOfRangeException(nameof(model), model.Kind, "Not a kind of file."),
    };

    private static byte[] BinaryStl(Model model)
    {
        using MemoryStream stream = new();
        StlWriter.Write(stream, model.Drawn);
        return stream.ToArray();
    }
}
