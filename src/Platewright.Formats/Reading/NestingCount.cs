namespace Platewright.Formats.Reading;

/// <summary>
/// Counts the triangles of things made of things before any is built, so that what is endless, too deep or too large
/// is refused at once. Each thing is looked at once however often it is used.
/// </summary>
/// <typeparam name="TKey">What tells the things apart.</typeparam>
/// <param name="request">Its limits hold.</param>
internal sealed class NestingCount<TKey>(ReadRequest request)
    where TKey : notnull
{
    /// <summary>Whatever the limit, the walk is on the stack.</summary>
    private const int DeepestStack = 1000;

    private readonly Dictionary<TKey, (long Triangles, int Height)> _known = [];
    private readonly HashSet<TKey> _open = [];

    /// <summary>Triangles of the thing with everything in it.</summary>
    /// <param name="place">Where the file refers to it.</param>
    /// <param name="look">Its own triangles, and what it is made of with the places that say so.</param>
    public long Count(TKey key, string place, Func<TKey, string, (long Own, IEnumerable<(TKey, string)> Inner)> look) =>
        Count(key, place, 0, look).Triangles;

    private (long Triangles, int Height) Count(
        TKey key, string place, int depth, Func<TKey, string, (long Own, IEnumerable<(TKey, string)> Inner)> look)
    {
        if (_open.Contains(key)) throw request.Refuse(place, "the object contains itself");
        if (!_known.TryGetValue(key, out (long Triangles, int Height) counted))
        {
            CheckDepth(place, depth);
            (long own, IEnumerable<(TKey, string)> inner) = look(key, place);
            counted = (own, 0);
            _open.Add(key);
            foreach ((TKey innerKey, string innerPlace) in inner)
            {
                (long triangles, int height) = Count(innerKey, innerPlace, depth + 1, look);
                counted = (counted.Triangles + triangles, Math.Max(counted.Height, height + 1));
                request.CheckTriangles(counted.Triangles, innerPlace);
            }
            _open.Remove(key);
            _known[key] = counted;
        }
        CheckDepth(place, depth + counted.Height);
        return counted;
    }

    private void CheckDepth(string place, int depth)
    {
        if (depth <= Math.Min(request.Limits.ComponentDepth, DeepestStack)) return;
        throw request.Refuse(
            place, $"objects lie more than {request.Limits.ComponentDepth} deep in each other", "raise the limit");
    }
}
