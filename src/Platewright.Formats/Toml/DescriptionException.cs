using System.Collections.Immutable;

namespace Platewright.Formats.Toml;

/// <summary>
/// What the user wrote about machines, materials or the study cannot be used: an unreadable file, a bad argument, an
/// unknown name. It carries every error found, each a sentence with its place. The command line answers it with exit
/// code 2.
/// </summary>
public sealed class DescriptionException : Exception
{
    public DescriptionException(IEnumerable<DescriptionError> errors)
        : this(errors.ToImmutableArray())
    {
    }

    public DescriptionException(DescriptionError error)
        : this([error])
    {
    }

    private DescriptionException(ImmutableArray<DescriptionError> errors)
        : base(string.Join(Environment.NewLine, errors.Select(e => e.ToString())))
    {
        if (errors.IsEmpty) throw new ArgumentException("At least one error is needed.", nameof(errors));
        Errors = errors;
    }

    /// <summary>All that was found wrong, in the order of the file; at least one.</summary>
    public ImmutableArray<DescriptionError> Errors { get; }
}
