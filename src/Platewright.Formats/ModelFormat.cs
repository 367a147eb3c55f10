namespace Platewright.Formats;

/// <summary>The kinds of model file that can be read.</summary>
public enum ModelFormat
{
    /// <summary>Triangles without unit or names, binary or ASCII (.stl).</summary>
    Stl,

    /// <summary>Polygons over a shared list of vertices, as text (.obj).</summary>
    Obj,

    /// <summary>Polygons or triangle strips, ASCII or binary of either byte order (.ply).</summary>
    Ply,

    /// <summary>3MF core specification, an OPC package (.3mf).</summary>
    ThreeMf,

    /// <summary>ISO/ASTM 52915 additive manufacturing file format, plain or zipped (.amf).</summary>
    Amf,
}
