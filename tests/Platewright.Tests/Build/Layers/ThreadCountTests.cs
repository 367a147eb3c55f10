using Platewright.Build.Layers;
using Platewright.Geometry;
using Platewright.Tests.Geometry;

namespace Platewright.Tests.Build.Layers;

public sealed class ThreadCountTests
{
    [Fact]
    public void Cut_Again_GivesTheSameBits()
    {
        // Batches of layers land on whatever threads are free; a single one comes from cutting inside a busy pool.
        Mesh gear = SharedMeshes.Joined(Solids.Gear(17, 0.4), Solids.Moved(Solids.Ball(9), new(15, 3, 5)));
        LayeredPart first = Cuts.Of(gear);
        LayeredPart[] again = new LayeredPart[8];
        Parallel.For(0, again.Length, i => again[i] = Cuts.Of(gear));
        foreach (LayeredPart other in again)
        {
            Assert.Equal(first.Sections.Select(s => s.AreaMm2), other.Sections.Select(s => s.AreaMm2));
            Assert.Equal(
                first.Sections.SelectMany(s => s.Loops.SelectMany(l => l)),
                other.Sections.SelectMany(s => s.Loops.SelectMany(l => l)));
        }
    }
}
