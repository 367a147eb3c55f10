namespace Platewright.Cli.Display;

/// <summary>File names without the folder that all of them share.</summary>
internal sealed class ShortNames
{
    private readonly int _shared;

    public ShortNames(IReadOnlyCollection<string> files)
    {
        string first = files.FirstOrDefault() ?? "";
        int same = first.LastIndexOf('/') + 1;
        foreach (string file in files)
        {
            while (same > 0 && !file.AsSpan().StartsWith(first.AsSpan(0, same), StringComparison.Ordinal))
                same = first.AsSpan(0, same - 1).LastIndexOf('/') + 1;
        }
        _shared = same;
    }

    public string Of(string file, string? part) => part is null ? file[_shared..] : $"{file[_shared..]} · {part}";
}
