namespace Platewright.Study.Documents;

/// <summary>What all parts that a machine can make take there, each in its quantity, one build for each copy.</summary>
/// <param name="Parts">How many parts that is, copies counted.</param>
/// <param name="TimeS">Machine time, warm-up and release included.</param>
/// <param name="LowTimeS">Least of it, 95 %: all parts off in the same way, as a wrong machine file would make them.</param>
/// <param name="HighTimeS">Most of it.</param>
/// <param name="WarmUpShare">Share of the time that is warm-up and release.</param>
/// <param name="EnergyKwh">Null where the machine describes no heaters.</param>
/// <param name="PeakPowerW">Greatest of all builds.</param>
public sealed record BuildsDocument(
    int Parts, double TimeS, double LowTimeS, double HighTimeS, double WarmUpShare, double MassG, double? EnergyKwh,
    double? PeakPowerW);

/// <summary>Temperatures and power over one build cycle: warm-up, one hour of building, cooling down.</summary>
/// <param name="WarmUpS">From cold to ready.</param>
/// <param name="HoldW">Mean power while building, motors and electronics included.</param>
/// <param name="ReleaseS">Until the part lets go; null where the room is too warm.</param>
/// <param name="Vented">Whether the chamber is opened for this material.</param>
/// <param name="Points">Rows of time s, nozzle °C, bed °C, chamber °C, power W; null for what is not there.</param>
public sealed record CycleDocument(
    string Material, double WarmUpS, double HoldW, double PeakW, double? ReleaseS, bool Vented,
    IReadOnlyList<IReadOnlyList<double?>> Points);
