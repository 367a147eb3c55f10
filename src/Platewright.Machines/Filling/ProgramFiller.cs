using System.Globalization;

namespace Platewright.Machines;

/// <summary>Takes from a program what it tells of its machine: size, speed, retraction, and the least it heats to.</summary>
internal static class ProgramFiller
{
    // What is asked for may be more than the drives do, or less than they could: our choice.
    private const double SpeedLow = 0.7, SpeedHigh = 1.5;

    private const int Digits = 3;

    // A move that leaves the volume by less is rounding.
    private const double Rounding = 0.01;

    public static void Fill(ProgramSeen program, KnownMachine known, Filling filling)
    {
        foreach (string key in known.SizeFromProgram ? MachineFiller.Sizes : [])
            filling.Note(key, $"at least: as far as {program.File} goes; correct it");
        double beyond = program.Beyond(known.BuildVolume);
        if (beyond > Rounding)
            filling.Tell(string.Create(
                CultureInfo.InvariantCulture,
                $"{program.File} leaves the build volume by {beyond:0.#} mm; check its size and the program."));
        if (program.SpeedMmS is { } speed && Allows("motion.speed_mm_s", speed))
        {
            ValueRange range = new(SpeedLow * speed, SpeedHigh * speed);
            filling.Set("motion.speed_mm_s", speed, range, $"the greatest that {program.File} asks for");
        }
        string origin = $"as in {program.File}";
        if (program.RetractionMm is { } back && Allows("extruder.retraction_mm", back))
            filling.Set("extruder.retraction_mm", Significant.Round(back, Digits), origin);
        if (program.RetractionSpeedMmS is { } pull && Allows("extruder.retraction_speed_mm_s", pull))
            filling.Set("extruder.retraction_speed_mm_s", Significant.Round(pull, Digits), origin);
        if (program.Heat() is { } heat)
            filling.Tell(
                $"{program.File} asks for {heat}: it heats to that at least; [heats_to] is for what it heats to at most.");
    }

    private static bool Allows(string key, double value) => MachineParameters.Find(key)!.Allowed.Contains(value);
}
