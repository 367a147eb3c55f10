namespace Platewright.Formats.ThreeMf;

/// <summary>The XML namespaces of 3MF, from its specifications.</summary>
internal static class Namespaces
{
    public const string Core = "http://schemas.microsoft.com/3dmanufacturing/core/2015/02";

    /// <summary>Of the drafts before the core specification was published; such files are still about.</summary>
    public const string Draft = "http://schemas.microsoft.com/3dmanufacturing/2013/01";

    public const string Materials = "http://schemas.microsoft.com/3dmanufacturing/material/2015/02";
    public const string Production = "http://schemas.microsoft.com/3dmanufacturing/production/2015/06";
    public const string Slices = "http://schemas.microsoft.com/3dmanufacturing/slice/2015/07";
    public const string Beams = "http://schemas.microsoft.com/3dmanufacturing/beamlattice/2017/02";
    public const string Balls = "http://schemas.microsoft.com/3dmanufacturing/beamlattice/balls/2020/07";
    public const string TriangleSets = "http://schemas.microsoft.com/3dmanufacturing/trianglesets/2021/07";
    public const string SecureContent = "http://schemas.microsoft.com/3dmanufacturing/securecontent/2019/04";

    public const string PackageRelationships = "http://schemas.openxmlformats.org/package/2006/relationships";
    public const string ModelRelationship = "http://schemas.microsoft.com/3dmanufacturing/2013/01/3dmodel";
    public const string ContentTypes = "http://schemas.openxmlformats.org/package/2006/content-types";
    public const string ModelContentType = "application/vnd.ms-package.3dmanufacturing-3dmodel+xml";
    public const string RelationshipsContentType = "application/vnd.openxmlformats-package.relationships+xml";

    /// <summary>What a file may require: read, or passed over with a note, without harm to its triangles.</summary>
    public static bool IsUnderstood(string name) =>
        name is Core or Draft or Materials or Production or Slices or Beams or Balls or TriangleSets;

    public static bool IsCore(string name) => name is Core or Draft;
}
