namespace Platewright.Tests.Machines;

/// <summary>A machine file with every table, to read, to check and to damage.</summary>
internal static class FullMachine
{
    public const string Text = """
        name = "Bench One"
        enclosed = true
        footprint_mm = [420, 440]
        note = "second hand"
        noise_db = 47
        exhaust = "filter"

        [build_volume]
        shape = "box"
        size_mm = [212.5, 208, 230]

        [margins]
        side_mm = 2
        left_mm = 5
        top_mm = 1

        [[keep_out]]
        min_mm = [0, 0, 0]
        max_mm = [20, 15, 3.5]

        [heats_to]
        nozzle_c = 280
        bed_c = 100
        chamber_c = 40

        [price]
        amount = 499.90
        currency = "EUR"

        [floor]
        door_mm = 300
        bed_travel_mm = 150
        spool_mm = 90

        [upkeep]
        life_years = 6
        residual_share = 0.2
        assemble_h = 3
        tune_h_per_year = 8
        maintain_h_per_100h = 0.5
        wear_per_100h = 2.5

        [motion]
        speed_mm_s = 150
        acceleration_mm_s2 = 3000
        contour_tolerance_mm = 0.05
        jerk_mm_s3 = 100_000
        axis_speed_mm_s = [200, 150, 12]
        axis_acceleration_mm_s2 = [5000, 3000, 200]
        first_layer_speed_mm_s = 40
        moving_bed = true

        [extruder]
        nozzle_bore_mm = 0.6
        filament_mm = 2.85
        melt_rate_mm3_s = 18
        retraction_mm = 0.8
        retraction_speed_mm_s = 35
        prime_mm3 = 40

        [handling]
        start_s = 75
        material_change_s = 150
        purge_mm3 = 120

        [heating]
        supply_w = 500
        electronics_w = 18
        motors_w = 12

        [heating.bed]
        power_w = 350
        mass_kg = 1.1
        specific_heat_j_kg_k = 880
        area_m2 = 0.046

        [heating.nozzle]
        power_w = 45
        capacity_j_k = 28
        area_m2 = 0.0035

        [heating.chamber]
        power_w = 120
        capacity_j_k = 400

        [heating.enclosure]
        size_mm = [330, 340, 380]
        wall_mm = 4
        wall_conductivity_w_mk = 0.19
        wall_capacity_j_m3k = 1_500_000
        frame_capacity_j_k = 5000
        air_changes_per_h = 2
        can_be_vented = false

        [range.motion]
        acceleration_mm_s2 = [1500, 6000]
        [range.motion.axis_speed_mm_s]
        y = [100, 180]
        [range.extruder]
        melt_rate_mm3_s = [14, 22]
        [range.heating.bed]
        capacity_j_k = [800, 1200]
        """;
}
