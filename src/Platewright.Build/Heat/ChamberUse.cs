using Platewright.Build.Heat.Network;
using Platewright.Machines;

namespace Platewright.Build.Heat;

/// <summary>How the chamber is used for a material.</summary>
/// <param name="IsClosed">Whether its air is apart from the room's; false for an open frame.</param>
/// <param name="IsVented">A chamber that could be closed is opened, as its air would make the part go soft.</param>
/// <param name="ClosedAirC">What its air would reach closed, °C; null for an open frame or one not described.</param>
/// <param name="Sentence">What there is to say, or null.</param>
public sealed record ChamberUse(bool IsClosed, bool IsVented, double? ClosedAirC, string? Sentence)
{
    internal static ChamberUse Of(Machine machine, Material material, double roomC)
    {
        if (machine.Heating is not { Enclosure: { } enclosure } heating)
        {
            string? unknown = machine is { Enclosed: true, Heating: not null }
                ? "The size of the enclosure is not described: its air is taken as the room's, and no soak is counted."
                : null;
            return new ChamberUse(false, false, null, unknown);
        }
        HeatLimits usual = material.UsualC;
        if (machine.HeatsTo is { } most) usual = usual with { BedC = Math.Min(usual.BedC, most.BedC) };
        Situation closed = new(roomC, usual, true, heating.ElectronicsW);
        MachineNetwork network = MachineNetwork.Of(heating, closed);
        double air = SteadyState.Of(network.Network).TemperatureC[network.ChamberAir];
        bool tooWarm = material.VentAboveC is { } limit && air > limit;
        bool vented = tooWarm && enclosure.CanBeVented && material.Needs.ChamberC <= roomC;
        string numbers = $"the closed chamber would reach {air:0} °C, and {material.Name} goes soft above "
            + $"{material.VentAboveC:0} °C";
        string? sentence = vented ? $"Opened: {numbers}."
            : tooWarm ? $"Take care: {numbers}, but it cannot be opened."
            : null;
        return new ChamberUse(!vented, vented, air, sentence);
    }
}
