using Platewright.Formats.Obj;
using Platewright.Formats.Reading;
using Platewright.Formats.Stl;

namespace Platewright.Formats;

/// <summary>Reads model files of every known format into meshes in mm.</summary>
public static class ModelReader
{
    /// <summary>Counts up whenever the same bytes would give another result; part of the key of stored results.</summary>
    public const int Version = 1;

    /// <summary>Reads one file from disk.</summary>
    /// <param name="path">Where it lies.</param>
    /// <param name="shownAs">The name to show; the path with forward slashes where it is null.</param>
    /// <param name="limits">What it may ask for; the default limits where it is null.</param>
    /// <param name="unit">The unit to take its numbers in, whatever the file says; null leaves it to the file.</param>
    /// <param name="cancel">Stops the work with an <see cref="OperationCanceledException"/>.</param>
    /// <returns>What can be used and what cannot: a bad file is never an exception.</returns>
    public static ModelReading Read(
        string path, string? shownAs = null, ReadLimits? limits = null, LengthUnit? unit = null, CancellationToken cancel = default)
    {
        var request = new ReadRequest(shownAs ?? path.Replace('\\', '/'), limits ?? ReadLimits.Default, unit, cancel);
        try
        {
            using ModelBytes bytes = ModelBytes.Open(path, request);
            return ReadKnown(bytes, request);
        }
        catch (ModelFileException e)
        {
            return new ModelReading([], [e.ToUnusable()]);
        }
    }

    /// <summary>Reads one file from memory; its name decides the format as a path does.</summary>
    public static ModelReading Read(
        string name, ReadOnlyMemory<byte> content, ReadLimits? limits = null, LengthUnit? unit = null, CancellationToken cancel = default)
    {
        var request = new ReadRequest(name, limits ?? ReadLimits.Default, unit, cancel);
        try
        {
            using var bytes = new ModelBytes(content);
            return ReadKnown(bytes, request);
        }
        catch (ModelFileException e)
        {
            return new ModelReading([], [e.ToUnusable()]);
        }
    }

    private static ModelReading ReadKnown(ModelBytes bytes, ReadRequest request) =>
        new([Path.GetExtension(request.File).ToLowerInvariant() switch
        {
            ".stl" => StlReader.Read(bytes, request),
            ".obj" => ObjReader.Read(bytes, request),
            _ => throw request.Refuse(null, "it is no kind of model file that can be read", "use .stl or .obj"),
        }], []);
}
