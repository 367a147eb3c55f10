using System.Collections.Immutable;

namespace Platewright.Machines;

/// <summary>
/// The bundled filament families. Needs are the low end of the usual range, usual temperatures its middle, rounded to
/// 5 °C. Data sheets and common practice, from memory, except where a source is named. Prices are invented typical ones.
/// </summary>
internal static class BundledMaterials
{
    private const string Practice = "data sheets and common practice, no source";

    private const string Crawford =
        "density and specific heat: Crawford, Plastics Engineering, table 1.8; the rest data sheets and common practice, "
        + "no source";

    private const string CrawfordHeat =
        "specific heat and softening: Crawford, Plastics Engineering, table 1.8; the rest data sheets and common "
        + "practice, no source";

    private const string Ventilate =
        "enclosure and ventilation first, local exhaust at the machine (NIOSH 2024-103). A warm chamber holds the load back "
        + "only until it is opened";

    // Stephens et al. 2013 measured both; every later number is for another machine and set-up.
    private const string FumesOfPla =
        "Least of the common families, about 2e10 ultrafine particles a minute (Stephens et al. 2013); still ventilate the "
        + "room (NIOSH 2024-103).";

    private const string FumesOfStyrenics =
        "Styrene and many ultrafine particles, for ABS about 1.9e11 a minute, ten times those of PLA (Stephens et al. 2013): "
        + Ventilate + ".";

    private const string FumesOfHotFamilies =
        "Run hot, and emissions rise strongly with nozzle temperature: " + Ventilate
        + ". ISO 27548 says how emissions are measured; ask for the spool's figures.";

    // Low emission: PLA by the source above; PETG common practice, no source.
    private const string FumesOfOthers =
        "No figure at hand; ventilate the room and stay away while it runs (NIOSH 2024-103). ISO 27548 says how emissions are "
        + "measured.";

    /// <summary>In alphabetical order.</summary>
    public static ImmutableArray<Material> All { get; } =
    [
        new("ABS", new(230, 95, 45), Shrinkage: 0.005, BrimMm: 6, Crawford)
        {
            UsualC = new(245, 100, 55),
            DensityGCm3 = 1.04, SpecificHeatJKgK = 1300,
            SofteningC = 105, MouldShrinkage = 0.0055, ReleaseC = 60, MinimumLayerTimeS = 10, MeltRateFactor = 0.95,
            PricePerKg = new(24, "EUR"), Drying = new(80, 3), Fumes = FumesOfStyrenics,
        },
        new("ASA", new(240, 95, 45), Shrinkage: 0.005, BrimMm: 6, Practice)
        {
            UsualC = new(250, 100, 55),
            DensityGCm3 = 1.07, SpecificHeatJKgK = 1400,
            SofteningC = 103, MouldShrinkage = 0.0055, ReleaseC = 60, MinimumLayerTimeS = 10, MeltRateFactor = 0.95,
            PricePerKg = new(30, "EUR"), Drying = new(80, 4), Fumes = FumesOfStyrenics,
        },
        // Those of PA6; the softening point is where it bends under 0.45 MPa (data sheets, from memory).
        new("PA", new(250, 60, 45), Shrinkage: 0.01, BrimMm: 8, Practice)
        {
            UsualC = new(265, 80, 60),
            DensityGCm3 = 1.13, SpecificHeatJKgK = 1650,
            SofteningC = 160, MouldShrinkage = 0.0115, ReleaseC = 50, MinimumLayerTimeS = 10, MeltRateFactor = 0.8,
            PricePerKg = new(60, "EUR"), Drying = new(85, 10), Fumes = FumesOfHotFamilies,
        },
        new("PC", new(260, 100, 60), Shrinkage: 0.006, BrimMm: 8, CrawfordHeat)
        {
            UsualC = new(285, 110, 80),
            DensityGCm3 = 1.2, SpecificHeatJKgK = 1200,
            SofteningC = 149, MouldShrinkage = 0.006, ReleaseC = 70, MinimumLayerTimeS = 10, MeltRateFactor = 0.7,
            PricePerKg = new(45, "EUR"), Drying = new(100, 6), Fumes = FumesOfHotFamilies,
        },
        new("PETG", new(230, 70, 0), Shrinkage: 0, BrimMm: 3, Practice)
        {
            UsualC = new(240, 80, 0), VentAboveC = 45,
            DensityGCm3 = 1.27, SpecificHeatJKgK = 1250,
            SofteningC = 80, MouldShrinkage = 0.0035, ReleaseC = 50, MinimumLayerTimeS = 10, MeltRateFactor = 0.75,
            PricePerKg = new(24, "EUR"), Drying = new(65, 5), Fumes = FumesOfOthers,
            LowEmission = true,
        },
        new("PLA", new(190, 50, 0), Shrinkage: 0, BrimMm: 2, Practice)
        {
            UsualC = new(205, 55, 0), VentAboveC = 35,
            DensityGCm3 = 1.24, SpecificHeatJKgK = 1500,
            SofteningC = 58, MouldShrinkage = 0.004, ReleaseC = 40, MinimumLayerTimeS = 8, MeltRateFactor = 1,
            PricePerKg = new(22, "EUR"), Drying = new(50, 5), Fumes = FumesOfPla, LowEmission = true,
        },
        // The softening point is where it bends under 0.45 MPa (data sheets, from memory).
        new("PP", new(220, 80, 40), Shrinkage: 0.015, BrimMm: 10, Crawford)
        {
            UsualC = new(235, 90, 50),
            DensityGCm3 = 0.905, SpecificHeatJKgK = 2000, SpoolG = 700,
            SofteningC = 95, MouldShrinkage = 0.0175, ReleaseC = 50, MinimumLayerTimeS = 12, MeltRateFactor = 0.8,
            PricePerKg = new(50, "EUR"), Fumes = FumesOfOthers,
        },
        // The softening point is the usual limit of use (data sheets, from memory).
        new("TPU", new(210, 30, 0), Shrinkage: 0, BrimMm: 0, Practice)
        {
            UsualC = new(225, 45, 0),
            DensityGCm3 = 1.17, SpecificHeatJKgK = 1650,
            SofteningC = 80, MouldShrinkage = 0.01, ReleaseC = 35, MinimumLayerTimeS = 12, MeltRateFactor = 0.3,
            PricePerKg = new(35, "EUR"), Drying = new(55, 5), Fumes = FumesOfOthers,
        },
    ];
}
