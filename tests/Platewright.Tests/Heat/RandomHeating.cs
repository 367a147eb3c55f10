using CsCheck;
using Platewright.Build.Heat;
using Platewright.Machines;

namespace Platewright.Tests.Heat;

/// <summary>Random machines: open and closed, with and without a chamber heater and a limited supply.</summary>
internal static class RandomHeating
{
    public static Gen<Heating> Any { get; } =
        from bedSide in Gen.Double[0.08, 0.5]
        from bedDensity in Gen.Double[0.15, 1.2]
        from bedCapacity in Gen.Double[8e3, 4e4]
        from nozzleW in Gen.Double[25, 100]
        from chamberW in Gen.Double[50, 600]
        from hasChamber in Gen.Bool
        from isClosed in Gen.Bool
        from wallMm in Gen.Double[0.5, 30]
        from changes in Gen.Double[0, 30]
        from supplyShare in Gen.Double[0.35, 1.3]
        select Of(
            bedSide, bedDensity, bedCapacity, nozzleW, hasChamber ? chamberW : null, isClosed, wallMm, changes,
            supplyShare);

    public static Gen<Material> AnyMaterial { get; } =
        Gen.Int[0, MaterialCatalog.Bundled.Length - 1].Select(i => MaterialCatalog.Bundled[i]);

    public static Gen<BuildLoad> AnyLoad { get; } =
        from hours in Gen.Double[0.05, 30]
        from flow in Gen.Double[0, 30]
        select new BuildLoad(hours * 3600, flow * hours * 3600);

    public static Machine With(Heating heating) => new()
    {
        Name = "random",
        BuildVolume = new BoxVolume(100, 100, 100),
        Heating = heating,
        Enclosed = heating.Enclosure is not null,
    };

    private static Heating Of(
        double side, double density, double capacity, double nozzleW, double? chamberW, bool isClosed, double wallMm,
        double changes, double supplyShare)
    {
        double area = side * side, bedW = density * area * 1e4;
        double inner = 1000 * side + 120;
        return new Heating
        {
            Bed = new Heater(bedW, capacity * area, area),
            Nozzle = new Heater(nozzleW, 25, 0.004),
            Chamber = isClosed && chamberW is { } w ? new Heater(w, 350, 0) : null,
            ElectronicsW = 12,
            MotorsW = 15,
            SupplyW = supplyShare * (bedW + nozzleW + (isClosed ? chamberW ?? 0 : 0)) + 27,
            Enclosure = isClosed ? new Enclosure(inner, inner, inner, wallMm) { AirChangesPerHour = changes } : null,
        };
    }
}
