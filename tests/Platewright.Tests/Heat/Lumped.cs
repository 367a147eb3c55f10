using System.Collections.Immutable;
using Platewright.Build.Heat.Network;

namespace Platewright.Tests.Heat;

/// <summary>One body in a room.</summary>
internal static class Lumped
{
    public static ThermalNetwork Of(
        double capacity, double startC, double roomC, HeatLaw loss, double heaterW = 0,
        double setC = double.PositiveInfinity, HeatLaw? besides = null)
    {
        ImmutableArray<ThermalLink> links = [new(0, 1, loss)];
        if (besides is not null) links = links.Add(new(0, 1, besides));
        return new(
            [new("body", capacity, startC), new("room", double.PositiveInfinity, roomC)], links,
            heaterW > 0 ? [new(0, heaterW, setC)] : [], roomC);
    }
}
