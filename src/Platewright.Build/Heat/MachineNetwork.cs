using System.Collections.Immutable;
using Platewright.Build.Heat.Network;
using Platewright.Machines;

namespace Platewright.Build.Heat;

/// <summary>
/// A machine as a network: bed, nozzle, air and walls of a closed chamber, the part as it grows, and the room. An open
/// frame, or a chamber opened for this material, gives its heat to the room at once. Nodes that are not there are -1.
/// <list type="bullet">
/// <item>The bed gives heat from both faces and its edges, the nozzle as a small upright block, the part as an upright
/// body of the size that it ends with: by convection to the air, by radiation to the walls.</item>
/// <item>Every wall counts as upright, in two halves joined by its conductivity; floor and lid differ little.
/// The frame and the drives warm up with the inner half.</item>
/// <item>A chamber heater heats the air; its capacity is added to the air's.</item>
/// </list>
/// </summary>
internal sealed class MachineNetwork
{
    // Bed, nozzle and parts: anodised metal, glass and polymers.
    private const double Emissivity = Radiation.UsualEmissivity;

    // Speed at which a moving carriage, a moving bed and the part's fan stir the air, m/s: common practice, no source.
    private const double StirringMS = 0.3;

    // Heat capacity of aluminium by volume, J/(m³·K): 2700 kg/m³ × 900 J/(kg·K). A bed's edges are as high as a plate
    // of aluminium of its area and capacity is thick.
    private const double AluminiumJM3K = 2700 * 900;

    // Thinner walls count as this, mm; they store next to nothing.
    private const double ThinnestWallMm = 0.1;

    // Conductivity of filament materials, W/(m·K): Crawford, Plastics Engineering, table 1.8.
    private const double PartConductivityWMK = 0.2;

    // The part has this share of its mass before the first bead, so that its temperature has a meaning.
    private const double FirstShare = 0.02;

    private readonly List<ThermalNode> _nodes = [];
    private readonly List<ThermalLink> _links = [];
    private readonly Heating _heating;
    private readonly Situation _situation;

    private MachineNetwork(Heating heating, Situation situation)
    {
        (_heating, _situation) = (heating, situation);
        Room = Node("room", double.PositiveInfinity);
        if (situation.Closed && heating.Enclosure is { } enclosure) AddChamber(enclosure);
        if (heating.Bed is { } bed) Bed = AddBed(bed);
        if (heating.Nozzle is { } nozzle) Nozzle = AddNozzle(nozzle);
        if (situation.Part is { } part) AddPart(part);
        Network = new ThermalNetwork([.. _nodes], [.. _links], HeatersIn(situation), situation.RoomC)
        {
            SupplyW = Math.Max(0, (heating.SupplyW ?? double.PositiveInfinity) - situation.OtherW),
        };
    }

    public ThermalNetwork Network { get; }

    public int Room { get; }

    public int Bed { get; } = -1;

    public int Nozzle { get; } = -1;

    public int ChamberAir { get; private set; } = -1;

    public int Part { get; private set; } = -1;

    public int WallInside { get; private set; } = -1;

    private int Surroundings => WallInside >= 0 ? WallInside : Room;

    private int Around => ChamberAir >= 0 ? ChamberAir : Room;

    public static MachineNetwork Of(Heating heating, Situation situation) => new(heating, situation);

    /// <summary>The same nodes at other temperatures; nodes that were not there begin at the room's.</summary>
    public ThermalNetwork From(MachineNetwork before, ReadOnlySpan<double> temperatureC)
    {
        ImmutableArray<ThermalNode>.Builder nodes = Network.Nodes.ToBuilder();
        for (int i = 0; i < nodes.Count; i++)
            for (int j = 0; j < before.Network.Nodes.Length; j++)
                if (before.Network.Nodes[j].Name == nodes[i].Name)
                    nodes[i] = nodes[i] with { StartC = temperatureC[j] };
        return Network with { Nodes = nodes.ToImmutable() };
    }

    private int Node(string name, double capacityJK)
    {
        _nodes.Add(new ThermalNode(name, capacityJK, _situation.RoomC));
        return _nodes.Count - 1;
    }

    private void Link(int from, int to, HeatLaw law) => _links.Add(new ThermalLink(from, to, law));

    private void AddChamber(Enclosure e)
    {
        double w = e.WidthMm / 1e3, d = e.DepthMm / 1e3, h = e.HeightMm / 1e3;
        double wall = Math.Max(e.WallMm, ThinnestWallMm) / 1e3;
        double volume = w * d * h, area = 2 * (w * d + w * h + d * h);
        var air = Air.At(_situation.RoomC + Air.KelvinOffset);
        double perK = air.DensityKgM3 * air.SpecificHeatJKgK * volume;
        ChamberAir = Node("air", perK + (_heating.Chamber?.CapacityJK ?? 0));
        WallInside = Node("inner wall", 0.5 * area * wall * e.WallCapacityJM3K + e.FrameCapacityJK);
        int outside = Node("outer wall", 0.5 * area * wall * e.WallCapacityJM3K);
        Link(WallInside, ChamberAir, new ConvectionLaw(area, h, Facing.Sideways, Stirring, h));
        Link(WallInside, outside, new LinearLaw(e.WallConductivityWMK * area / wall));
        Link(outside, Room, new ConvectionLaw(area, h, Facing.Sideways));
        Link(outside, Room, new RadiationLaw(area * Emissivity));
        const double secondsPerHour = 3600;
        Link(ChamberAir, Room, new LinearLaw(perK * e.AirChangesPerHour / secondsPerHour));
    }

    private double Stirring => _situation.Building ? StirringMS : 0;

    private int AddBed(Heater heater)
    {
        int bed = Node("bed", heater.CapacityJK);
        double side = Math.Sqrt(heater.AreaM2), length = side / 4;
        Link(bed, Around, new ConvectionLaw(heater.AreaM2, length, Facing.Up, Stirring, side));
        Link(bed, Around, new ConvectionLaw(heater.AreaM2, length, Facing.Down, Stirring, side));
        double thick = heater.CapacityJK / (AluminiumJM3K * heater.AreaM2), edges = 4 * side * thick;
        Link(bed, Around, new ConvectionLaw(edges, thick, Facing.Sideways, Stirring, side));
        Link(bed, Surroundings, new RadiationLaw((2 * heater.AreaM2 + edges) * Emissivity));
        return bed;
    }

    // A cube's side of that surface stands for its height.
    private int AddNozzle(Heater heater)
    {
        int nozzle = Node("nozzle", heater.CapacityJK);
        double side = Math.Sqrt(heater.AreaM2 / 6);
        Link(nozzle, Around, new ConvectionLaw(heater.AreaM2, side, Facing.Sideways, Stirring, side));
        Link(nozzle, Surroundings, new RadiationLaw(heater.AreaM2 * Emissivity));
        return nozzle;
    }

    private void AddPart(PartBody part)
    {
        double perSecond = _situation.Building ? part.CapacityJK / part.GrowsForS : 0;
        double first = _situation.Building ? FirstShare * part.CapacityJK : part.CapacityJK;
        _nodes.Add(new ThermalNode("part", first, _situation.RoomC) { GrowthWK = perSecond });
        Part = _nodes.Count - 1;
        Link(Part, Around, new ConvectionLaw(part.SurfaceM2, part.SideM, Facing.Sideways, Stirring, part.SideM));
        Link(Part, Surroundings, new RadiationLaw(part.SurfaceM2 * Emissivity));
        if (Bed >= 0)
            Link(Bed, Part, new LinearLaw(PartConductivityWMK * part.SideM * part.SideM / (0.5 * part.SideM)));
        if (Nozzle >= 0 && _situation.Building) Link(Nozzle, Part, new StreamLaw(perSecond, _situation.RoomC));
    }

    private ImmutableArray<ThermalHeater> HeatersIn(Situation s)
    {
        if (s.SetC is not { } set) return [];
        List<ThermalHeater> heaters = [];
        if (_heating.Nozzle is { } nozzle) heaters.Add(new(Nozzle, nozzle.PowerW, set.NozzleC));
        if (_heating.Bed is { } bed) heaters.Add(new(Bed, bed.PowerW, set.BedC));
        if (_heating.Chamber is { } chamber && ChamberAir >= 0)
            heaters.Add(new(ChamberAir, chamber.PowerW, set.ChamberC));
        return [.. heaters];
    }
}
