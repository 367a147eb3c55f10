using Platewright.Geometry;
using Platewright.Study.Documents;

namespace Platewright.Tests.Report;

/// <summary>
/// Fits a part's box in a handful of poses. Not the proved fit: just numbers that agree with each other, so that the page
/// can be tested before and apart from it.
/// </summary>
internal static class FixtureFit
{
    private static readonly Rotation[] UprightPoses = [Rotation.Identity, Turned(45), Turned(90)];
    private static readonly Rotation[] TurnedPoses = [.. Resting().SelectMany(r => UprightPoses.Select(u => u * r))];
    private static readonly Rotation[] TiltedPoses =
        [.. TurnedPoses, .. Resting().Select(r => Diagonal() * r), .. Resting().Select(r => Diagonal() * Turned(90) * r)];

    public static NeedDocument Need(Vec3 size, AllowanceDocument allowed, HeatDocument? heat, double? wall)
    {
        double turned = SmallestCube(size, allowed.Turn ? TurnedPoses : UprightPoses);
        double? tilted = allowed.Tilt ? SmallestCube(size, TiltedPoses) : null;
        double? scaled = allowed.Scale ? (tilted ?? turned) * allowed.LeastScale : null;
        return new(turned, tilted, scaled, tilted, Curve(size, TurnedPoses), Curve(size, TiltedPoses), heat, wall);
    }

    public static PartFitDocument On(MachineDocument machine, Vec3 size, NeedDocument need, AllowanceDocument allowed)
    {
        Vec3 room = Room(machine.BuildVolume);
        WayDocument asDrawn = Way(room, size, [Rotation.Identity]);
        WayDocument upright = Way(room, size, UprightPoses);
        WayDocument turned = Way(room, size, TurnedPoses);
        WayDocument tilted = Way(room, size, TiltedPoses);
        tilted = tilted with { UpperBound = tilted.LargestScale * 1.00005 };
        int pieces = (int)Math.Ceiling(1 / tilted.LargestScale);
        (string verdict, string counts, WayDocument way) =
            asDrawn.Fits ? ("as_drawn", "fits", asDrawn)
            : upright.Fits ? ("turned", "fits", upright)
            : turned.Fits && allowed.Turn ? ("turned", "fits", turned)
            : tilted.Fits && allowed.Tilt ? ("tilted", "compromise", tilted)
            : tilted.LargestScale >= allowed.LeastScale && allowed.Scale ? ("scaled", "compromise", tilted)
            : pieces <= 2 && allowed.Cut ? ("in_pieces", "compromise", tilted)
            : ("no", "no", tilted);
        double clearance = (way.LargestScale - 1) * Math.Max(size.X, Math.Max(size.Y, size.Z));
        bool hot = need.Heat is not { } needs || machine.HeatsTo is not { } has
            || (has.NozzleC >= needs.NozzleC && has.BedC >= needs.BedC && has.ChamberC >= needs.ChamberC);
        var reasons = new List<string> { Reason(verdict, way.LargestScale, clearance, pieces) };
        if (!hot) reasons.Add($"{machine.Name} does not reach the {need.Heat!.NozzleC} °C nozzle, {need.Heat.BedC} °C bed "
            + $"and {need.Heat.ChamberC} °C chamber that the material needs.");
        double scale = verdict is "as_drawn" or "turned" or "tilted" ? 1 : Math.Min(1, way.LargestScale);
        var pose = new PoseDocument(scale, way.Rotation!, Translation(room, size, way.Rotation!, scale));
        return new(machine.Id, verdict, counts, counts != "no" && clearance is >= 0 and < 2, counts != "no" && hot && !(need.ThinnestWallMm < 0.45), true,
            verdict == "in_pieces" ? pieces : 1, reasons, asDrawn, upright, turned, tilted, clearance, pose,
            counts == "no" || verdict == "in_pieces" ? null : FixtureEstimate.Of(machine, verdict, size, scale))
        {
            Cost = counts == "no" || verdict == "in_pieces" ? null : Math.Round((decimal)(size.X * size.Y * size.Z) * 4e-6m + 0.6m, 2),
            GapsMm = Gaps(machine, room, Extent(size, RotationOf(way)) * (verdict == "scaled" ? scale : 1)),
            Cuts = verdict == "in_pieces" ? Cuts(room, size, pieces) : null,
        };
    }

    /// <summary>The part stands in the middle; round volumes have one wall.</summary>
    private static double[] Gaps(MachineDocument machine, Vec3 room, Vec3 extent)
    {
        MarginsDocument m = machine.MarginsMm;
        double top = machine.BuildVolume.HeightMm - m.Top - extent.Z;
        if (machine.BuildVolume.DiameterMm is { } d) return [d / 2 - m.Left - Math.Sqrt(extent.X * extent.X + extent.Y * extent.Y) / 2, top];
        double x = (room.X - extent.X) / 2, y = (room.Y - extent.Y) / 2;
        return [x - m.Left, x - m.Right, y - m.Front, y - m.Back, top];
    }

    /// <summary>Slices across the longest dimension, each laid as it fits best.</summary>
    private static CutsDocument Cuts(Vec3 room, Vec3 size, int pieces)
    {
        double longest = Math.Max(size.X, Math.Max(size.Y, size.Z));
        Vec3 along = size.X == longest ? Vec3.UnitX : size.Y == longest ? Vec3.UnitY : Vec3.UnitZ;
        Vec3 slice = size - along * (longest - longest / pieces);
        WayDocument way = Way(room, slice, TurnedPoses);
        double[] middle = Translation(room, slice, way.Rotation!, 1);
        return new(
            [along.X, along.Y, along.Z],
            [.. Enumerable.Range(0, pieces + 1).Select(i => longest * ((double)i / pieces - 0.5))],
            [
                .. Enumerable.Range(0, pieces).Select(i =>
                {
                    Vec3 there = RotationOf(way).ToMatrix().Apply(along * (longest * ((i + 0.5) / pieces - 0.5)));
                    return new PoseDocument(1, way.Rotation!, [middle[0] - there.X, middle[1] - there.Y, middle[2] - there.Z]);
                }),
            ]);
    }

    private static Rotation RotationOf(WayDocument way) =>
        new(way.Rotation![0], way.Rotation[1], way.Rotation[2], way.Rotation[3]);

    private static string Reason(string verdict, double scale, double clearance, int pieces) => verdict switch
    {
        "as_drawn" => $"Fits as drawn with {clearance:0.0} mm to spare.",
        "turned" => $"Fits when turned, with {clearance:0.0} mm to spare.",
        "tilted" => "Fits only at a slant along the diagonal; it needs support underneath.",
        "scaled" => $"{-clearance:0.0} mm too long even along the best diagonal; fits at {100 * scale:0.0} %. "
            + $"At that scale an 8 mm bore is {8 * scale:0.00} mm; mating and threaded parts stop fitting.",
        "in_pieces" => $"{-clearance:0.0} mm too long even along the best diagonal; fits when cut in {pieces} pieces.",
        _ => $"{-clearance:0.0} mm too long even along the best diagonal; the largest that fits is {100 * scale:0.0} %.",
    };

    private static WayDocument Way(Vec3 room, Vec3 size, Rotation[] poses)
    {
        Rotation best = poses.MaxBy(p => Scale(room, Extent(size, p)));
        double scale = Scale(room, Extent(size, best));
        double[] rotation = [best.W, best.X, best.Y, best.Z];
        return new(scale >= 1, scale, null, rotation, Translation(room, size, rotation, scale));
    }

    private static double Scale(Vec3 room, Vec3 extent) =>
        Math.Min(room.Z / extent.Z, Math.Min(room.X / extent.X, room.Y / extent.Y));

    /// <summary>The mesh is centred on the origin; a box volume has its corner there, a round one its axis.</summary>
    private static double[] Translation(Vec3 room, Vec3 size, IReadOnlyList<double> q, double scale)
    {
        Vec3 extent = Extent(size, new Rotation(q[0], q[1], q[2], q[3])) * scale;
        bool round = room.X != Math.Floor(room.X);
        return round ? [0, 0, extent.Z / 2] : [room.X / 2, room.Y / 2, extent.Z / 2];
    }

    /// <summary>A round volume counts as the square inside it.</summary>
    private static Vec3 Room(BuildVolumeDocument volume) => volume.Shape == "cylinder"
        ? new(volume.DiameterMm!.Value / Math.Sqrt(2), volume.DiameterMm.Value / Math.Sqrt(2), volume.HeightMm)
        : new(volume.SizeMm![0], volume.SizeMm[1], volume.SizeMm[2]);

    private static double SmallestCube(Vec3 size, Rotation[] poses) => poses.Min(p =>
    {
        Vec3 e = Extent(size, p);
        return Math.Max(e.X, Math.Max(e.Y, e.Z));
    });

    private static List<IReadOnlyList<double>> Curve(Vec3 size, Rotation[] poses)
    {
        var all = poses.Select(p => Extent(size, p)).Select(e => (Bed: Math.Max(e.X, e.Y), Height: e.Z)).Distinct().ToList();
        return [.. all.Where(a => !all.Any(b => b != a && b.Bed <= a.Bed && b.Height <= a.Height))
            .OrderBy(a => a.Bed).Select(a => (IReadOnlyList<double>)[a.Bed, a.Height])];
    }

    private static Vec3 Extent(Vec3 size, Rotation rotation)
    {
        Matrix3 m = rotation.ToMatrix();
        return new(Along(m.Row0, size), Along(m.Row1, size), Along(m.Row2, size));
    }

    private static double Along(Vec3 row, Vec3 size) =>
        Math.Abs(row.X) * size.X + Math.Abs(row.Y) * size.Y + Math.Abs(row.Z) * size.Z;

    private static Rotation Turned(double degrees) => Rotation.About(Vec3.UnitZ, degrees * Math.PI / 180);

    private static Rotation[] Resting() =>
        [Rotation.Identity, Rotation.About(Vec3.UnitX, Math.PI / 2), Rotation.About(Vec3.UnitY, Math.PI / 2)];

    /// <summary>Carries x along the space diagonal.</summary>
    private static Rotation Diagonal() => Rotation.Between(Vec3.UnitX, new Vec3(1, 1, 1));
}
