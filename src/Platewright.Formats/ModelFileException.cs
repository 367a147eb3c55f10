using Platewright.Formats.Reading;

namespace Platewright.Formats;

/// <summary>A model file cannot be used. The message is one sentence for its owner.</summary>
public sealed class ModelFileException : Exception
{
    /// <param name="file">The name to show.</param>
    /// <param name="place">Byte, line or element; null for the file as a whole.</param>
    /// <param name="problem">What is wrong, without a full stop.</param>
    /// <param name="remedy">What to do, without a full stop.</param>
    public ModelFileException(string file, string? place, string problem, string remedy)
        : base(Printable.OneLine($"{file}{(place is null ? "" : $", {place}")}: {problem}; {remedy}."))
    {
        File = Printable.OneLine(file);
        Place = place;
    }

    public string File { get; }

    public string? Place { get; }

    internal UnusableFile ToUnusable() => new(File, Place, Message);
}
