namespace Platewright.Machines;

/// <summary>What decides which values are typical of a machine.</summary>
/// <param name="Closed">Closed against the room; null where not known.</param>
/// <param name="Round">A round build surface: it stands still, and the nozzle is carried by arms or an arm.</param>
/// <param name="SurfaceM2">Area of the build surface, m², greater than 0.</param>
public sealed record MachineClass(bool? Closed, bool Round, double SurfaceM2)
{
    public static MachineClass Of(BuildVolume volume, bool? closed) =>
        new(closed, volume is CylinderVolume, BuildSurface.AreaM2(volume));

    /// <summary>True where the bed most likely carries the part: open frames that are not round.</summary>
    public bool MovesItsBed => Closed is false && !Round;

    /// <summary>In words, as "open machines with a moving bed".</summary>
    public string Words => (Closed, Round) switch
    {
        (true, _) => "closed machines",
        (false, true) => "open machines with a round bed",
        (false, false) => "open machines with a moving bed",
        (null, true) => "machines with a round bed",
        _ => "machines of any kind",
    };
}
