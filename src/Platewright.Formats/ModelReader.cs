using Platewright.Formats.Amf;
using Platewright.Formats.Obj;
using Platewright.Formats.Packs;
using Platewright.Formats.Ply;
using Platewright.Formats.Reading;
using Platewright.Formats.Stl;
using Platewright.Formats.ThreeMf;

namespace Platewright.Formats;

/// <summary>Reads model files of every known format into meshes in mm.</summary>
public static class ModelReader
{
    /// <summary>
    /// Counts up whenever the same bytes would give another result; part of the key of stored results.
    /// </summary>
    public const int Version = 1;

    /// <summary>Reads one file from disk.</summary>
    /// <param name="path">Where it lies.</param>
    /// <param name="shownAs">The name to show; the path with forward slashes where it is null.</param>
    /// <param name="limits">What it may ask for; the default limits where it is null.</param>
    /// <param name="unit">The unit to take its numbers in, whatever the file says; null leaves it to the file.</param>
    /// <param name="cancel">Stops the work with an <see cref="OperationCanceledException"/>.</param>
    /// <returns>What can be used and what cannot: a bad file is never an exception.</returns>
    public static ModelReading Read(
        string path, string? shownAs = null, ReadLimits? limits = null, LengthUnit? unit = null,
        CancellationToken cancel = default)
    {
        var request = new ReadRequest(shownAs ?? path.Replace('\\', '/'), limits ?? ReadLimits.Default, unit, cancel);
        return ReadSafely(request, () => ModelBytes.Open(path, request));
    }

    /// <summary>Reads one file from memory; its name decides the format as a path does.</summary>
    public static ModelReading Read(
        string name, ReadOnlyMemory<byte> content, ReadLimits? limits = null, LengthUnit? unit = null,
        CancellationToken cancel = default)
    {
        var request = new ReadRequest(name, limits ?? ReadLimits.Default, unit, cancel);
        return ReadSafely(request, () => new ModelBytes(content));
    }

    /// <summary>Reads by the name's extension.</summary>
    /// <param name="budget">What may still be unpacked.</param>
    /// <param name="depth">How many archives the bytes lie in.</param>
    internal static ModelReading ReadKnown(ModelBytes bytes, ReadRequest request, UnpackBudget budget, int depth)
    {
        if (bytes.Length == 0) throw request.Refuse(null, "it is empty");
        WrongContent.Check(bytes, request);
        return Path.GetExtension(request.File).ToLowerInvariant() switch
        {
            ".stl" => One(StlReader.Read(bytes, request)),
            ".obj" => One(ObjReader.Read(bytes, request)),
            ".ply" => One(PlyReader.Read(bytes, request)),
            ".3mf" => One(ThreeMfReader.Read(bytes.All(request), request, budget)),
            ".amf" => One(AmfReader.Read(bytes.All(request), request, budget)),
            ".zip" => PackReader.Read(bytes.All(request), request, budget, depth + 1),
            _ => throw request.Refuse(null, "it is not named as a model file", $"use {ModelFolder.KnownExtensions}"),
        };
    }

    private static ModelReading One(ModelFile file) => new([file], []);

    private static ModelReading ReadSafely(ReadRequest request, Func<ModelBytes> open)
    {
        try
        {
            using ModelBytes bytes = open();
            return ReadKnown(bytes, request, new UnpackBudget(request.Limits.UnpackedBytes), depth: 0);
        }
        catch (ModelFileException e)
        {
            return new ModelReading([], [e.ToUnusable()]);
        }
        catch (Exception e) when (
            e is OutOfMemoryException or AggregateException { InnerException: OutOfMemoryException })
        {
            return new ModelReading(
                [], [request.Refuse(null, "it needs more memory than there is", "split it").ToUnusable()]);
        }
    }
}
