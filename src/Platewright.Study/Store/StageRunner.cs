using System.Collections.Concurrent;
using System.Text.Json.Serialization.Metadata;

namespace Platewright.Study.Store;

/// <summary>
/// Runs stages through the store: what is kept is not computed again, what is computed is kept at once. Work that is cancelled or
/// fails keeps nothing. Safe for use from several threads.
/// </summary>
/// <param name="store">Null computes everything and keeps nothing.</param>
public sealed class StageRunner(ResultStore? store)
{
    private readonly ConcurrentDictionary<string, int> _computed = new(StringComparer.Ordinal);
    private int _found;

    /// <summary>How many results each stage computed in this run.</summary>
    public IReadOnlyDictionary<string, int> Computed => _computed;

    /// <summary>How many results came from the store.</summary>
    public int Found => _found;

    /// <summary>The result of a stage for these inputs and options, from the store or from <paramref name="compute"/>.</summary>
    internal T Run<T>(Stage stage, IReadOnlyList<string> inputs, string options, JsonTypeInfo<T> type, Func<T> compute)
    {
        ResultKey key = ResultKey.Of(stage, inputs, options);
        if (store?.Find(key) is { } kept)
        {
            Interlocked.Increment(ref _found);
            return StoredValue.Unpack(kept, type);
        }
        T value = compute();
        store?.Keep(key, stage, StoredValue.Pack(value, type));
        _computed.AddOrUpdate(stage.Name, 1, (_, n) => n + 1);
        return value;
    }
}
