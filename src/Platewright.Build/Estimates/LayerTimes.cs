using Platewright.Build.Motion;

namespace Platewright.Build.Estimates;

/// <summary>Time and material of all layers of a part on one machine.</summary>
/// <param name="Layers">Each layer, planned or estimated.</param>
/// <param name="Planned">The layers that were planned; all others are estimated from them or equal to one.</param>
/// <param name="ErrorS">
/// Half-width of the 99 % interval of the whole time that comes from layers not planned, s; 0 where all were.
/// </param>
public sealed record LayerTimes(MotionTimes[] Layers, IReadOnlyList<int> Planned, double ErrorS)
{
    public MotionTimes Total
    {
        get
        {
            MotionTimes sum = default;
            foreach (MotionTimes layer in Layers) sum += layer;
            return sum;
        }
    }
}
