using Platewright.Build.Motion;
using Platewright.Geometry;

namespace Platewright.Build.Paths;

/// <summary>
/// All moves of one layer in the machine's axes, with the speeds the recipe wishes. A standstill of 1 marks where filament is
/// pulled back and pushed forward again; a machine's own time takes its place. The change to the next layer is taken to be
/// as far as that from this layer's end to its begin.
/// </summary>
internal sealed record LayerPlan(Vec3 Start, Move[] Moves);
