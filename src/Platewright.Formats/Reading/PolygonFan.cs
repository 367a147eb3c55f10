namespace Platewright.Formats.Reading;

/// <summary>Polygons into triangles: a fan from the first corner.</summary>
internal static class PolygonFan
{
    public static void AddTriangles(ReadOnlySpan<int> polygon, List<int> corners)
    {
        for (int i = 1; i + 1 < polygon.Length; i++)
        {
            corners.Add(polygon[0]);
            corners.Add(polygon[i]);
            corners.Add(polygon[i + 1]);
        }
    }
}
