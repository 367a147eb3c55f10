using Platewright.Machines;

namespace Platewright.Build.Heat;

/// <summary>
/// The heat of one machine and one material: what it reaches, how it warms up. Depends on no part, so that one object
/// serves all parts; <see cref="BuildCycle"/> adds the build. All heaters start at once. The supply serves the nozzle
/// first, then the bed, then the chamber, each with what electronics and the motors leave.
/// Immutable once made, and safe for several threads.
/// </summary>
public sealed class MachineHeat
{
    /// <summary>Room temperature where none is stated, °C.</summary>
    public const double UsualRoomC = 22;

    private readonly Lazy<WarmUp?> _warmUp;

    /// <param name="machine">The machine.</param>
    /// <param name="material">The material.</param>
    /// <param name="roomC">Room temperature, −20 … 60 °C.</param>
    /// <exception cref="ArgumentOutOfRangeException">The room's temperature is outside its range.</exception>
    public MachineHeat(Machine machine, Material material, double roomC = UsualRoomC)
    {
        if (!(roomC is >= -20 and <= 60))
            throw new ArgumentOutOfRangeException(nameof(roomC), roomC, "a room has -20 to 60 °C");
        (Machine, Material, RoomC) = (machine, material, roomC);
        Chamber = ChamberUse.Of(machine, material, roomC);
        Settings = ReachJudge.Judge(this, out HeatReach reach);
        Reach = reach;
        _warmUp = new Lazy<WarmUp?>(() => WarmUp.Of(this));
    }

    public Machine Machine { get; }

    public Material Material { get; }

    public double RoomC { get; }

    public HeatReach Reach { get; }

    /// <summary>How the chamber is used: open, closed, or opened because this material would go soft in it.</summary>
    public ChamberUse Chamber { get; }

    /// <summary>Air around the part once all is warm, °C: what a closed chamber reaches, else the room's.</summary>
    public double AirC => Chamber is { IsClosed: true, ClosedAirC: { } air } ? air : RoomC;

    /// <summary>
    /// Temperatures it is run at, °C: the usual ones where they are reached with ease, else the least ones.
    /// </summary>
    public HeatLimits Settings { get; }

    /// <summary>From cold to ready; null where a need is never reached, or the machine describes no heaters.</summary>
    public WarmUp? WarmUp => _warmUp.Value;

    internal MachineNetwork NetworkAt(HeatLimits? setC, bool building = false, PartBody? part = null)
    {
        Heating heating = Machine.Heating ?? new Heating();
        double other = heating.ElectronicsW + (building ? heating.MotorsW : 0);
        return MachineNetwork.Of(heating, new Situation(RoomC, setC, Chamber.IsClosed, other)
        {
            Building = building,
            Part = part,
        });
    }
}
