using System.Collections.Immutable;
using Platewright.Build.Estimates;
using Platewright.Build.Heat;
using Platewright.Formats;
using Platewright.Formats.Programs;
using Platewright.Formats.Toml;
using Platewright.Geometry;
using Platewright.Machines;

namespace Platewright.Study.Interview;

/// <summary>A job whose time was measured, ready to be estimated on any machine.</summary>
/// <param name="Shown">The file as the user named it.</param>
/// <param name="Seconds">Measured from start to finish, warm-up included, cooling left out.</param>
/// <param name="Timing">The same from the estimate.</param>
public sealed record MeasuredJob(string Shown, double Seconds, JobTiming Timing)
{
    private const string Key = "--job";

    /// <summary>Reads and plans <c>FILE,TIME</c>; all parts of the file were built together, once each.</summary>
    /// <exception cref="DescriptionException">There is no such file, or it or the time cannot be read.</exception>
    public static MeasuredJob Of(string text, Recipe recipe, Material material, CancellationToken cancel)
    {
        int comma = text.LastIndexOf(',');
        string file = (comma < 0 ? text : text[..comma]).Trim();
        if (comma < 0 || file.Length == 0 || SpokenTime.Seconds(text[(comma + 1)..]) is not { } seconds)
        {
            throw Refused(
                "expected a model file or motion program and its time, as bracket.stl,2:35 or bracket.stl,155 min; "
                + $"found \"{text}\".");
        }
        JobTiming timing = ProgramReader.IsProgram(file)
            ? Retimed(file, material, cancel)
            : Estimated(file, recipe, material, cancel);
        return new MeasuredJob(file, seconds, timing);
    }

    private static JobTiming Retimed(string file, Material material, CancellationToken cancel)
    {
        ProgramReading reading = ProgramReader.Read(file, cancel: cancel);
        if (reading.Unusable is { } unusable) throw Refused(unusable.Message);
        if (reading.Program!.AllMm is null)
            throw Refused($"{reading.Program.File} moves nowhere, so it takes no time.");
        return machine => Watched(ProgramEstimator.Estimate(reading.Program, Measured(machine), material, cancel).Time);
    }

    private static JobTiming Estimated(string file, Recipe recipe, Material material, CancellationToken cancel)
    {
        ModelReading reading = ModelReader.Read(file, file.Replace('\\', '/'), ReadLimits.Default, null, cancel);
        if (reading.Unusable.Count > 0) throw Refused(reading.Unusable[0].Message);
        ImmutableArray<PartPaths> parts =
            [.. reading.Files.SelectMany(f => f.Parts).Select(p => Planned(p, recipe, material, cancel))];
        if (parts.IsEmpty) throw Refused($"{file} holds no part.");
        return machine =>
        {
            MachineHeat heat = new(Measured(machine), material);
            TimeParts[] times = [.. parts.Select(p => BuildEstimator.Estimate(p, heat, full: false, cancel).Time)];
            return Watched(times);
        };
    }

    private static PartPaths Planned(ModelPart part, Recipe recipe, Material material, CancellationToken cancel)
    {
        Mesh welded = Welding.Weld(part.Mesh);
        if (welded.Bounds.Size.Z <= 0) throw Refused("the model has no height, so there is nothing to build.");
        return PartPaths.Of(
            welded, MeshTopology.Of(welded), Matrix3.Identity * (1 + material.Shrinkage), recipe, recipe.BrimFor(material), cancel);
    }

    /// <summary>The ranges would only be carried into an error that nobody asks for.</summary>
    private static Machine Measured(Machine machine) => machine with { Ranges = machine.Ranges.Clear() };

    /// <summary>Nobody waits with the watch in hand for the part to let go.</summary>
    private static double Watched(params TimeParts[] times) => times[0].WarmUpS + times.Sum(t => t.BuildingS);

    private static DescriptionException Refused(string message) => new(new DescriptionError(message, Key: Key));
}
