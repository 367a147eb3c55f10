using System.ComponentModel.DataAnnotations;

namespace Platewright.Study.Documents;

/// <summary>What building one part takes on one machine: once, at the quality of the recipe.</summary>
/// <param name="MaterialAssumed">True where nothing names the material.</param>
/// <param name="SupportMm3">Of the material what supports take.</param>
/// <param name="EnergyKwh">Null where the machine describes no heaters, or never reaches the material's temperatures.</param>
/// <param name="PeakPowerW">Null as the energy.</param>
/// <param name="RelativeError">99 % half-width of the time from layers not planned.</param>
/// <param name="Warp">A rank to compare by, not a forecast.</param>
/// <param name="FitCost">What standing as the machine needs it costs against the best pose; null where nothing.</param>
public sealed record PartEstimateDocument(
    string Recipe, string Material, bool MaterialAssumed, EstimatePoseDocument Pose, int Layers, TimeDocument TimeS,
    double MaterialMm3, double SupportMm3, double FilamentMm, double MassG, double Spools, EnergyDocument? EnergyKwh,
    double? PeakPowerW, double RelativeError, ErrorDocument TimeError, ErrorDocument EnergyError, WarpDocument? Warp, string? FitCost,
    IReadOnlyList<string> Notes);

/// <summary>An indicative rank of how much a part wants to curl off the build surface.</summary>
/// <param name="Rank">low, medium or high.</param>
/// <param name="ContactMm">Longest extent of what touches the build surface.</param>
/// <param name="BelowSofteningK">How far the air around it is below the material's softening point.</param>
public sealed record WarpDocument(string Rank, double ContactMm, double Shrinkage, double BelowSofteningK, string Sentence);

/// <summary>How the part stands while it is built, and what that brings.</summary>
/// <param name="Way">as_drawn, turned, tilted or scaled.</param>
/// <param name="Scale">Factor on the drawn part, shrinkage compensation included.</param>
/// <param name="Rotation">Unit quaternion w, x, y, z; the turn about the vertical is left open.</param>
/// <param name="ContactMm2">Area of the first layer.</param>
/// <param name="OverhangMm2">What of all layers lies beyond the layer below.</param>
public sealed record EstimatePoseDocument(
    [property: AllowedValues("as_drawn", "turned", "tilted", "scaled")] string Way, double Scale, IReadOnlyList<double> Rotation, double ContactMm2, double OverhangMm2);
