namespace Platewright.Study.Pipeline;

/// <summary>
/// Bounds how many bytes of files are in work at once, so that memory does not grow with the number of cores. A file larger than
/// the bound waits until it is alone.
/// </summary>
internal sealed class MemoryGate(long bytes)
{
    // A mesh takes a few times the bytes of its file: this keeps the meshes in work below about 1 GiB.
    public const long UsualBytes = 256L << 20;

    private readonly object _gate = new();
    private long _inWork;

    public T Through<T>(long size, Func<T> work)
    {
        lock (_gate)
        {
            while (_inWork > 0 && _inWork + size > bytes) Monitor.Wait(_gate);
            _inWork += size;
        }
        try
        {
            return work();
        }
        finally
        {
            lock (_gate)
            {
                _inWork -= size;
                Monitor.PulseAll(_gate);
            }
        }
    }
}
