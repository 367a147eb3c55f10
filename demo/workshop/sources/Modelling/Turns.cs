using Platewright.Geometry;

namespace Platewright.Demo.Modelling;

/// <summary>Quarter turns and mirrors, exact, to bring a body from the plane it was drawn in to how it lies.</summary>
public static class Turns
{
    /// <summary>About x: what was y points up.</summary>
    public static readonly Matrix3 YUp = new(Vec3.UnitX, -Vec3.UnitZ, Vec3.UnitY);

    /// <summary>About y: what was z points along x, what was x points down.</summary>
    public static readonly Matrix3 ZToX = new(Vec3.UnitZ, Vec3.UnitY, -Vec3.UnitX);

    /// <summary>About x by half a turn: upside down.</summary>
    public static readonly Matrix3 Over = new(Vec3.UnitX, -Vec3.UnitY, -Vec3.UnitZ);

    /// <summary>Left and right exchanged.</summary>
    public static readonly Matrix3 Mirror = new(-Vec3.UnitX, Vec3.UnitY, Vec3.UnitZ);

    public static readonly Vec3 Down = -Vec3.UnitZ;

    public static readonly Vec3 Up = Vec3.UnitZ;
}
