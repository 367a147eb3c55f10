namespace Platewright.Sizing.Cases;

/// <summary>One part, or the best of alternatives, made once on one machine.</summary>
/// <param name="PartId">Which part: of alternatives the one that takes the least time.</param>
/// <param name="Fit">With or without a compromise.</param>
/// <param name="TimeS">Machine time, warm-up and release included, s; null where nothing was estimated.</param>
/// <param name="WarmUpS">Of it until the machine is ready, s.</param>
/// <param name="ReleaseS">Of it until the part lets go, s.</param>
/// <param name="LowTime">Share that the time may be below, negative or 0.</param>
/// <param name="HighTime">Share that it may be above, 0 or positive.</param>
/// <param name="MassG">Filament, supports and brim included, g; null as the time.</param>
/// <param name="EnergyKwh">Null where the machine describes no heaters.</param>
/// <param name="PeakW">Greatest power; null as the energy.</param>
/// <param name="Reckoned">
/// True where nothing was estimated on this machine, as for a part in pieces, and the times and filament are those of other machines
/// or reckoned from the part's size.
/// </param>
/// <param name="FilamentPerKg">Price of its filament in the currency of the case; null where not known.</param>
public sealed record Making(
    string PartId, FitClass Fit, double? TimeS, double WarmUpS, double ReleaseS, double LowTime, double HighTime,
    double? MassG, double? EnergyKwh, double? PeakW, decimal? FilamentPerKg, bool Reckoned);
