namespace Platewright.Study.Judgement;

/// <summary>Parts of a project by what it needs of them: each alone, or one of several alternatives.</summary>
internal static class AnyOf
{
    /// <summary>In the order of their first part; one of each group is needed.</summary>
    public static T[][] Groups<T>(IEnumerable<T> parts, Func<T, string?> anyOf, Func<T, string> id) =>
    [
        .. parts.GroupBy(p => anyOf(p) is { } group ? $"group {group}" : $"part {id(p)}", StringComparer.Ordinal).Select(g => g.ToArray()),
    ];
}
