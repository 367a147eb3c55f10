namespace Platewright.Formats.ThreeMf;

/// <summary>Names of parts in an OPC package (ECMA-376 part 2), here without their leading slash.</summary>
internal static class PartNames
{
    /// <summary>The part a relationship's target names, seen from the part that has the relationship.</summary>
    public static string Resolve(string source, string target)
    {
        string path = Uri.UnescapeDataString(target.Replace('\\', '/'));
        int folder = source.LastIndexOf('/');
        if (!path.StartsWith('/') && folder >= 0) path = $"{source[..folder]}/{path}";
        var segments = new List<string>();
        foreach (string segment in path.Split('/'))
        {
            if (segment.Length == 0 || segment == ".") continue;
            if (segment != "..") segments.Add(segment);
            else if (segments.Count > 0) segments.RemoveAt(segments.Count - 1);
        }
        return string.Join('/', segments);
    }
}
