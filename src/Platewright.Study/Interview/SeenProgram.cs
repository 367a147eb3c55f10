using Platewright.Formats.Programs;
using Platewright.Formats.Toml;
using Platewright.Machines;

namespace Platewright.Study.Interview;

/// <summary>Reads what a motion program tells of the machine it was made for.</summary>
public static class SeenProgram
{
    private const string Key = "--program";

    /// <exception cref="DescriptionException">
    /// It is no program by its name, cannot be read, or moves nowhere.
    /// </exception>
    public static ProgramSeen Read(string file, CancellationToken cancel)
    {
        if (!ProgramReader.IsProgram(file))
            throw Refused($"expected a motion program, {ProgramReader.KnownExtensions}; found \"{file}\".");
        ProgramReading reading = ProgramReader.Read(file, cancel: cancel);
        if (reading.Unusable is { } unusable) throw Refused(unusable.Message);
        return ProgramSeen.Of(reading.Program!)
            ?? throw Refused($"{reading.Program!.File} moves nowhere, so it tells nothing.");
    }

    private static DescriptionException Refused(string message) => new(new DescriptionError(message, Key: Key));
}
