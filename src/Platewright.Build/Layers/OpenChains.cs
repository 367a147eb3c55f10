using Platewright.Geometry;

namespace Platewright.Build.Layers;

/// <summary>
/// Outlines that stop at an edge without a mate. They are joined end to start, nearest first, until all are closed: equal points
/// first (edges that more than two triangles share), then across holes of the mesh.
/// </summary>
internal sealed class OpenChains
{
    /// <summary>Nearer ends are the same point, mm.</summary>
    private const double SamePointMm = 1e-7;

    private readonly List<List<Vec2>> _chains = [];

    public void Add(List<Vec2> chain) => _chains.Add(chain);

    /// <summary>Closes all and adds them; the number of joints longer than a point.</summary>
    public int CloseInto(List<Vec2[]> loops)
    {
        int gaps = 0;
        while (_chains.Count > 0)
        {
            List<Vec2> chain = _chains[^1];
            _chains.RemoveAt(_chains.Count - 1);
            while (true)
            {
                double best = (chain[0] - chain[^1]).Length;
                int with = -1;
                for (int i = 0; i < _chains.Count; i++)
                {
                    double distance = (_chains[i][0] - chain[^1]).Length;
                    if (distance < best) (best, with) = (distance, i);
                }
                if (best > SamePointMm) gaps++;
                if (with < 0) break;
                chain.AddRange(best > SamePointMm ? _chains[with] : _chains[with].Skip(1));
                _chains.RemoveAt(with);
            }
            if ((chain[0] - chain[^1]).Length <= SamePointMm) chain.RemoveAt(chain.Count - 1);
            if (chain.Count > 2) loops.Add([.. chain]);
        }
        return gaps;
    }
}
