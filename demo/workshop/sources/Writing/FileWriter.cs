namespace Platewright.Demo.Writing;

/// <summary>The bytes of a model's file.</summary>
public static class FileWriter
{
    public static byte[] Bytes(Model model) => model.Kind switch
    {
        FileKind.StlBinary => MeshBinary.Stl(model),
        FileKind.StlText => MeshText.Stl(model),
        FileKind.Obj => MeshText.Obj(model),
        FileKind.PlyText => MeshText.Ply(model),
        FileKind.PlyBinary => MeshBinary.Ply(model),
        FileKind.ThreeMf => Packages.ThreeMf(model),
        FileKind.Amf => MeshText.Amf(model),
        _ => throw new ArgumentOutOfRangeException(nameof(model), model.Kind, "Not a kind of file."),
    };
}
