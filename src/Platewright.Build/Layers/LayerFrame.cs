using Platewright.Geometry;

namespace Platewright.Build.Layers;

/// <summary>
/// The plane axes layers are worked in, turned against the machine's by an angle that parts are not drawn at: rows then
/// meet nearly every edge at a slant, where the ends of runs give it exactly.
/// </summary>
public static class LayerFrame
{
    /// <summary>Some degrees from all multiples of 15° and 22.5°, some tenths from those of 1° and 2.5°.</summary>
    private const double TurnDeg = 8.65;

    private static readonly double Cos = Math.Cos(TurnDeg * Math.PI / 180);
    private static readonly double Sin = Math.Sin(TurnDeg * Math.PI / 180);

    public static Vec3 FromMachine(Vec3 p) => new(Cos * p.X + Sin * p.Y, Cos * p.Y - Sin * p.X, p.Z);

    public static Vec2 ToMachine(Vec2 p) => new(Cos * p.X - Sin * p.Y, Sin * p.X + Cos * p.Y);

    /// <summary>The unit direction at an angle in the machine's axes, in the axes of the layers.</summary>
    public static Vec2 Direction(double machineDeg)
    {
        double angle = (machineDeg - TurnDeg) * Math.PI / 180;
        return new Vec2(Math.Cos(angle), Math.Sin(angle));
    }
}
