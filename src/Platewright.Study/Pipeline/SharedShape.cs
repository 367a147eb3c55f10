using Platewright.Fit;

namespace Platewright.Study.Pipeline;

/// <summary>
/// One shape used by several pieces of work, built when the first needs it and let go when the last is done, so that the shapes
/// of a large study are never all in memory.
/// </summary>
internal sealed class SharedShape(Func<PartShape> build, int uses)
{
    private readonly Lock _gate = new();
    private PartShape? _shape;
    private int _left = uses;

    /// <summary>The shape; whoever calls this calls <see cref="Release"/> too, or <see cref="Release"/> alone.</summary>
    public PartShape Use()
    {
        lock (_gate)
        {
            return _shape ??= build();
        }
    }

    public void Release()
    {
        lock (_gate)
        {
            if (--_left == 0) _shape = null;
        }
    }
}
