namespace Platewright.Machines;

/// <summary>
/// Completes what a person stated of a machine with values typical of its class, each with its range, and finds the heat
/// capacity of the bed from the minutes it takes to get hot.
/// </summary>
public static class MachineFiller
{
    private const string Stated = "stated";

    /// <summary>The keys of a size, those of a box and of a round one.</summary>
    internal static readonly string[] Sizes = [
        "build_volume.shape", "build_volume.size_mm", "build_volume.diameter_mm", "build_volume.height_mm",
    ];

    // What a recipe was chosen for, and what nearly every desktop machine has.
    private static readonly string[] Usual = ["extruder.nozzle_bore_mm", "extruder.filament_mm"];

    private static readonly string[] Typical =
    [
        "motion.speed_mm_s", "motion.acceleration_mm_s2", "motion.contour_tolerance_mm", "motion.first_layer_speed_mm_s",
        "extruder.melt_rate_mm3_s", "extruder.retraction_mm", "extruder.retraction_speed_mm_s", "extruder.prime_mm3",
        "handling.start_s", "handling.material_change_s", "handling.purge_mm3", "heating.electronics_w", "heating.motors_w",
        "heating.nozzle.power_w", "heating.nozzle.capacity_j_k", "heating.nozzle.area_m2",
    ];

    private static readonly string[] TypicalOfWalls =
    [
        "heating.enclosure.wall_mm", "heating.enclosure.wall_conductivity_w_mk", "heating.enclosure.wall_capacity_j_m3k",
        "heating.enclosure.frame_capacity_j_k", "heating.enclosure.air_changes_per_h",
    ];

    public static FilledMachine Fill(KnownMachine known)
    {
        MachineClass kind = MachineClass.Of(known.BuildVolume, known.Closed);
        Filling filling = new(Skeleton(known, kind), kind);
        foreach (string key in Sizes) filling.Note(key, Stated);
        filling.Note("name", Stated);
        if (known.Closed is not null) filling.Note("enclosed", Stated);
        foreach (string key in known.Price is null ? [] : (string[])["price.amount", "price.currency"])
            filling.Note(key, Stated);
        filling.Note("motion.moving_bed", (known.Closed, kind.MovesItsBed) switch
        {
            (_, true) => "a guess: most open machines carry the part on a bed that moves in y; correct it",
            (null, false) => "a guess: nothing was said of the frame; correct it",
            _ => $"a guess: so with most {kind.Words}; correct it",
        });
        foreach (string key in Usual)
            filling.Set(key, MachineParameters.Find(key)!.TypicalOf(kind).Value, "usual; correct it if yours differs");
        foreach (string key in Typical) filling.SetTypical(key);
        if (known.Closed is true)
        {
            foreach (string key in TypicalOfWalls) filling.SetTypical(key);
            filling.Note("heating.enclosure.size_mm", "the build volume and the room that drives usually take; correct it");
            filling.Note("heating.enclosure.can_be_vented", "a guess: most have a door or a lid; correct it");
        }
        if (known.Program is { } program) ProgramFiller.Fill(program, known, filling);
        if (known.SupplyW is { } supply) filling.Set("heating.supply_w", supply, Stated);
        if (known.HeatedBed) BedFiller.Fill(known, filling);
        return filling.Done();
    }

    /// <summary>Every table it will have; the numbers come later.</summary>
    private static Machine Skeleton(KnownMachine known, MachineClass kind) => new()
    {
        Name = known.Name,
        BuildVolume = known.BuildVolume,
        Enclosed = known.Closed,
        Price = known.Price,
        Motion = new MotionLimits(0, 0, 0) { FirstLayerSpeedMmS = 0, MovingBed = kind.MovesItsBed },
        Heating = new Heating
        {
            Bed = known.HeatedBed ? new Heater(0, 0, 0) : null,
            Nozzle = new Heater(0, 0, 0),
            Enclosure = known.Closed is true ? Around(known.BuildVolume) : null,
        },
    };

    // Drives beside and above the build volume, and the frame: common practice, no source.
    private static Enclosure Around(BuildVolume volume)
    {
        const double sideMm = 120, topMm = 140;
        var size = FreeSpace.BoundsOf(volume).Size;
        return new Enclosure(size.X + sideMm, size.Y + sideMm, size.Z + topMm, 0);
    }
}
