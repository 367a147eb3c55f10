using Platewright.Formats.Toml;
using Platewright.Geometry;

namespace Platewright.Machines;

/// <summary>Writes a machine as the TOML text that <see cref="MachineFile"/> reads back.</summary>
public static class MachineFileWriter
{
    /// <param name="machine">The machine.</param>
    /// <param name="comment">What to say beside a key, as where its value came from; null for nothing.</param>
    /// <param name="header">Lines at the top of the file.</param>
    public static string Write(Machine machine, Func<string, string?>? comment = null, params ReadOnlySpan<string> header)
    {
        TomlWriter text = new(comment ?? (_ => null));
        foreach (string line in header) text.Comment(line);
        text.Add("", "name", machine.Name);
        text.Add("", "note", machine.Note);
        // The enclosure says it too, and a file says nothing twice.
        text.Add("", "enclosed", machine.Heating?.Enclosure is null ? machine.Enclosed : null);
        text.Add("", "footprint_mm", machine.FootprintMm is { } f ? [f.X, f.Y] : null);
        text.Add("", "noise_db", machine.NoiseDb);
        text.Add("", "exhaust", machine.Exhaust?.Word());
        Volume(text, machine.BuildVolume);
        Edges(text, machine.Margins, machine.BuildVolume);
        foreach (Bounds3 box in machine.KeepOuts)
        {
            text.Open("[[keep_out]]");
            text.Add("keep_out", "min_mm", Numbers(box.Min));
            text.Add("keep_out", "max_mm", Numbers(box.Max));
        }
        text.Table("heats_to", ("nozzle_c", machine.HeatsTo?.NozzleC), ("bed_c", machine.HeatsTo?.BedC),
            ("chamber_c", machine.HeatsTo?.ChamberC));
        if (machine.Price is { } price)
        {
            text.Open("[price]");
            text.Add("price", "amount", (double)price.Amount);
            text.Add("price", "currency", price.Currency);
        }
        FloorInUse floor = machine.Floor;
        if (floor != new FloorInUse())
            text.Table("floor", ("door_mm", floor.DoorMm), ("bed_travel_mm", floor.BedTravelMm), ("spool_mm", floor.SpoolMm));
        Upkeep u = machine.Upkeep;
        text.Table("upkeep", ("life_years", u.LifeYears), ("residual_share", u.ResidualShare), ("assemble_h", u.AssembleH),
            ("tune_h_per_year", u.TuneHPerYear), ("maintain_h_per_100h", u.MaintainHPer100H),
            ("wear_per_100h", u.WearPer100H));
        Making(text, machine);
        if (machine.Heating is { } heating) Heat(text, heating);
        Ranges(text, machine);
        return text.ToString();
    }

    private static void Volume(TomlWriter text, BuildVolume volume)
    {
        const string Table = "build_volume";
        text.Open("[build_volume]");
        text.Add(Table, "shape", volume switch { BoxVolume => "box", CylinderVolume => "cylinder", _ => "prism" });
        if (volume is BoxVolume box) text.Add(Table, "size_mm", [box.WidthMm, box.DepthMm, box.HeightMm]);
        if (volume is CylinderVolume round) text.Add(Table, "diameter_mm", round.DiameterMm);
        if (volume is PrismVolume prism)
            text.AddRows(Table, "polygon_mm", prism.PolygonMm.Select(p => (double[])[p.X, p.Y]));
        if (volume is not BoxVolume) text.Add(Table, "height_mm", volume.HeightMm);
    }

    private static void Edges(TomlWriter text, Margins m, BuildVolume volume)
    {
        if (m == Margins.None) return;
        if (volume is not BoxVolume || (m.LeftMm == m.RightMm && m.LeftMm == m.FrontMm && m.LeftMm == m.BackMm))
            text.Table("margins", ("side_mm", m.LeftMm), ("top_mm", m.TopMm));
        else
            text.Table("margins", ("left_mm", m.LeftMm), ("right_mm", m.RightMm), ("front_mm", m.FrontMm),
                ("back_mm", m.BackMm), ("top_mm", m.TopMm));
    }

    private static void Making(TomlWriter text, Machine machine)
    {
        if (machine.Motion is { } m)
        {
            text.Table("motion", ("speed_mm_s", m.SpeedMmS), ("acceleration_mm_s2", m.AccelerationMmS2),
                ("contour_tolerance_mm", m.SpeedJumpMmS is null ? m.ContourToleranceMm : null),
                ("speed_jump_mm_s", m.SpeedJumpMmS), ("jerk_mm_s3", m.JerkMmS3),
                ("first_layer_speed_mm_s", m.FirstLayerSpeedMmS));
            text.Add("motion", "axis_speed_mm_s", m.AxisSpeedMmS is { } v ? Numbers(v) : null);
            text.Add("motion", "axis_acceleration_mm_s2", m.AxisAccelerationMmS2 is { } a ? Numbers(a) : null);
            text.Add("motion", "moving_bed", m.MovingBed);
        }
        Extruder e = machine.Extruder;
        text.Table("extruder", ("nozzle_bore_mm", e.NozzleBoreMm), ("filament_mm", e.FilamentMm),
            ("melt_rate_mm3_s", e.MeltRateMm3S), ("retraction_mm", e.RetractionMm),
            ("retraction_speed_mm_s", e.RetractionSpeedMmS), ("prime_mm3", e.PrimeMm3));
        Handling h = machine.Handling;
        text.Table("handling", ("start_s", h.StartS), ("material_change_s", h.MaterialChangeS), ("purge_mm3", h.PurgeMm3));
    }

    private static void Heat(TomlWriter text, Heating heating)
    {
        text.Table("heating", ("supply_w", heating.SupplyW), ("electronics_w", heating.ElectronicsW),
            ("motors_w", heating.MotorsW));
        Warm("bed", heating.Bed);
        Warm("nozzle", heating.Nozzle);
        Warm("chamber", heating.Chamber);
        if (heating.Enclosure is not { } e) return;
        const string Walls = "heating.enclosure";
        text.Open($"[{Walls}]");
        text.Add(Walls, "size_mm", [e.WidthMm, e.DepthMm, e.HeightMm]);
        text.Add(Walls, "wall_mm", e.WallMm);
        text.Add(Walls, "wall_conductivity_w_mk", e.WallConductivityWMK);
        text.Add(Walls, "wall_capacity_j_m3k", e.WallCapacityJM3K);
        text.Add(Walls, "frame_capacity_j_k", e.FrameCapacityJK);
        text.Add(Walls, "air_changes_per_h", e.AirChangesPerHour);
        text.Add(Walls, "can_be_vented", e.CanBeVented);

        void Warm(string name, Heater? heater) => text.Table($"heating.{name}", ("power_w", heater?.PowerW),
            ("capacity_j_k", heater?.CapacityJK), ("area_m2", name == "chamber" ? null : heater?.AreaM2));
    }

    private static void Ranges(TomlWriter text, Machine machine)
    {
        string open = "";
        foreach (MachineParameter parameter in MachineParameters.All)
        {
            if (parameter.RangeOf(machine) is not { } range) continue;
            int dot = parameter.Key.LastIndexOf('.');
            string table = $"range.{parameter.Key[..dot]}";
            if (table != open) text.Open($"[{open = table}]");
            text.Add(table, parameter.Key[(dot + 1)..], [range.Low, range.High]);
        }
    }

    private static double[] Numbers(Vec3 v) => [v.X, v.Y, v.Z];
}
