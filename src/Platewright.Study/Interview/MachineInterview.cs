using Platewright.Formats.Toml;
using Platewright.Machines;

namespace Platewright.Study.Interview;

/// <summary>The six things a person knows of a machine, as they say them; null for what they leave open.</summary>
/// <param name="Name">What to call it.</param>
/// <param name="Size">Width, depth, height in mm; or diameter, height of a round bed.</param>
/// <param name="Enclosure">open or closed.</param>
/// <param name="Watts">Of the supply, or of the bed heater with the word bed before them.</param>
/// <param name="BedMinutes">Minutes the bed takes, as "4 to 60"; none for a bed that is not heated.</param>
/// <param name="Price">As "450 EUR".</param>
/// <param name="ProgramFile">Path of a motion program made for it.</param>
/// <param name="JobFile">Path of a model or motion program whose build was timed.</param>
/// <param name="JobTime">How long that took, as 2:35 or 155 min.</param>
public sealed record MachineInterview(
    string Name, string? Size, string? Enclosure, string? Watts, string? BedMinutes, string? Price, string? ProgramFile, string? JobFile,
    string? JobTime)
{
    private static readonly string[] Header =
    [
        "Beside each value stands where it came from; correct what you know better.",
        "[range] holds the bounds of what nobody measured: estimates carry them into their error. Delete what you measured.",
        "What it heats to at most is not known: add [heats_to] from its papers, and heat is judged by it.",
    ];

    /// <summary>The machine, with typical values and their ranges for what was left open.</summary>
    /// <exception cref="DescriptionException">An answer is not right, or the size is not known.</exception>
    public FilledMachine Fill(CancellationToken cancel)
    {
        if (!NameId.IsPossible(Name)) throw Wrong("expected a name with a letter or a digit in it.", "name");
        ProgramSeen? program = ProgramFile is null ? null : SeenProgram.Read(ProgramFile, cancel);
        BuildVolume? stated = Size is null ? null : MachineAnswers.Size(Size);
        (double Watts, bool OfBed)? power = Watts is null ? null : MachineAnswers.Power(Watts);
        BedWarmUp? warmUp = BedMinutes is null ? null : MachineAnswers.WarmUp(BedMinutes);
        FilledMachine filled = MachineFiller.Fill(new KnownMachine(Name, stated ?? program?.LeastVolume() ?? throw Wrong(
            "the size, or a motion program made for it, is needed; everything else may stay open.", "size"))
        {
            Closed = Enclosure is null ? null : MachineAnswers.Closed(Enclosure),
            SupplyW = power is { OfBed: false } supply ? supply.Watts : null,
            BedHeaterW = power is { OfBed: true } bed ? bed.Watts : null,
            HeatedBed = BedMinutes is null || warmUp is not null,
            BedWarmUp = warmUp,
            Price = Price is null ? null : MachineAnswers.Price(Price),
            Program = program,
            SizeFromProgram = stated is null,
        });
        if (JobFile is null && JobTime is null) return filled;
        if (JobFile is null || JobTime is null) throw Wrong("a timed job needs both its file and its time.", "job");
        MeasuredJob job = MeasuredJob.Of($"{JobFile},{JobTime}", RecipeCatalog.Usual, MaterialCatalog.Get("PLA"), cancel);
        return JobCalibration.Fit(filled, job.Timing, job.Seconds);
    }

    /// <summary>The text of the machine's file, with the origin of each value beside it.</summary>
    public static string FileOf(FilledMachine filled) => MachineFileWriter.Write(
        filled.Machine, key => filled.Origins.GetValueOrDefault(key), [.. Header, .. filled.Notes.Select(n => $"To check: {n}")]);

    private static DescriptionException Wrong(string message, string key) => new(new DescriptionError(message, Key: key));
}
