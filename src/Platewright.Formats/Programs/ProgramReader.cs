using Platewright.Formats.Reading;

namespace Platewright.Formats.Programs;

/// <summary>
/// Reads motion programs: RS-274 words (NIST RS274/NGC interpreter report, NISTIR 6556) with the trade's usual
/// additions for extrusion. Where dialects differ, <see cref="MotionProgram.Choices"/> says what was chosen; words it
/// does not know are counted and named. The file is read in blocks, never as a whole.
/// </summary>
public static class ProgramReader
{
    /// <summary>How far a chord may lie from its arc, mm.</summary>
    public const double ChordToleranceMm = 0.002;

    public const string KnownExtensions = ".gcode, .nc or .ngc";

    private const int BlockBytes = 1 << 18;

    public static bool IsProgram(string path) =>
        Path.GetExtension(path).ToLowerInvariant() is ".gcode" or ".nc" or ".ngc";

    /// <summary>The dialect a file's name suggests.</summary>
    public static ProgramDialect DialectOf(string path) =>
        Path.GetExtension(path).ToLowerInvariant() is ".nc" or ".ngc" ? ProgramDialect.Rs274 : ProgramDialect.Extrusion;

    /// <summary>Reads a program from disk. A bad file is a result, never an exception.</summary>
    /// <param name="path">Where it lies.</param>
    /// <param name="shownAs">The name to show; the path with forward slashes where it is null.</param>
    /// <param name="limits">Greatest size; the default limits where it is null.</param>
    /// <param name="dialect">Null for what the name suggests.</param>
    /// <param name="cancel">Stops the work with an <see cref="OperationCanceledException"/>.</param>
    public static ProgramReading Read(
        string path, string? shownAs = null, ReadLimits? limits = null, ProgramDialect? dialect = null,
        CancellationToken cancel = default)
    {
        var request = new ReadRequest(shownAs ?? path.Replace('\\', '/'), limits ?? ReadLimits.Default, null, cancel);
        return ReadSafely(request, dialect ?? DialectOf(path), () => ModelBytes.Open(path, request));
    }

    /// <summary>Reads a program from memory; its name suggests the dialect as a path does.</summary>
    public static ProgramReading Read(
        string name, ReadOnlyMemory<byte> content, ProgramDialect? dialect = null, CancellationToken cancel = default)
    {
        var request = new ReadRequest(name, ReadLimits.Default, null, cancel);
        return ReadSafely(request, dialect ?? DialectOf(name), () => new ModelBytes(content));
    }

    private static ProgramReading ReadSafely(ReadRequest request, ProgramDialect dialect, Func<ModelBytes> open)
    {
        try
        {
            using ModelBytes bytes = open();
            if (bytes.Length == 0) throw request.Refuse(null, "it is empty");
            WrongContent.Check(bytes, request);
            var interpreter = new ProgramInterpreter(request, dialect);
            ReadLines(bytes, request, interpreter);
            return new ProgramReading(interpreter.Finish(), null);
        }
        catch (ModelFileException e)
        {
            return new ProgramReading(null, e.ToUnusable());
        }
        catch (OutOfMemoryException)
        {
            return new ProgramReading(
                null, request.Refuse(null, "it needs more memory than there is", "split it").ToUnusable());
        }
    }

    private static void ReadLines(ModelBytes bytes, ReadRequest request, ProgramInterpreter interpreter)
    {
        byte[] block = new byte[Math.Min(BlockBytes, bytes.Length)];
        int held = 0, line = 0;
        for (long offset = 0; offset < bytes.Length && !interpreter.Ended;)
        {
            request.Cancel.ThrowIfCancellationRequested();
            int got = (int)Math.Min(block.Length - held, bytes.Length - offset);
            bytes.ReadAt(offset, block.AsSpan(held, got), request);
            offset += got;
            ReadOnlySpan<byte> rest = block.AsSpan(0, held + got);
            for (int end; !interpreter.Ended && (end = rest.IndexOf((byte)'\n')) >= 0; rest = rest[(end + 1)..])
                interpreter.Run(rest[..end], ++line);
            held = rest.Length;
            if (held == block.Length && offset < bytes.Length)
                throw request.Refuse($"line {line + 1}", $"the line is longer than {BlockBytes} bytes");
            rest.CopyTo(block);
        }
        if (held > 0 && !interpreter.Ended) interpreter.Run(block.AsSpan(0, held), line + 1);
    }
}
