using System.Globalization;
using Platewright.Geometry;
using Platewright.Study.Documents;
using Platewright.Study.Pipeline;

namespace Platewright.Study.Describing;

/// <summary>
/// Parts that seem to be one thing, as the documents show it. One file that two projects name is no surprise, nor are the alternatives of
/// one group; both are left out.
/// </summary>
internal static class AlikeDescription
{
    private const int MostNamed = 6;

    public static IReadOnlyList<AlikeDocument> Of(IReadOnlyList<StudyPart> parts)
    {
        StudyPart[] distinct = [.. parts.Where(p => p.Examined is not null).DistinctBy(p => (p.Examined!.File, p.Examined.Object))];
        return [.. AlikeGroup.Of([.. distinct.Select(p => p.Examined!.Signature)]).SelectMany(group => Of(group, distinct))];
    }

    private static IEnumerable<AlikeDocument> Of(AlikeGroup group, StudyPart[] parts)
    {
        StudyPart first = parts[group.First];
        var others = group.Others.Select(o => (Part: parts[o.Part], o.Likeness)).Where(o => !AreAlternatives(first, o.Part)).ToArray();
        StudyPart[] same = [first, .. others.Where(o => o.Likeness.Kind == LikenessKind.Same).Select(o => o.Part)];
        if (same.Length > 1)
        {
            string message = $"{Names(same)} are the same shape: if they are one thing, count it once or make them alternatives (any_of).";
            yield return new AlikeDocument("same", [.. same.Select(p => p.Id)], null, message);
        }
        foreach ((StudyPart part, Likeness likeness) in others.Where(o => o.Likeness.Kind is LikenessKind.Scaled or LikenessKind.Mirrored))
        {
            bool mirrored = likeness.Kind == LikenessKind.Mirrored;
            string size = likeness.Scale == 1 ? "" : string.Create(CultureInfo.InvariantCulture, $" at {100 * likeness.Scale:0.#} % of its size");
            string message = mirrored
                ? $"{Name(part)} is the mirror image of {Name(first)}{size}."
                : $"{Name(part)} is {Name(first)}{size}: if they are sizes of one thing, make them alternatives (any_of).";
            yield return new AlikeDocument(mirrored ? "mirrored" : "scaled", [first.Id, part.Id], likeness.Scale, message);
        }
    }

    private static bool AreAlternatives(StudyPart a, StudyPart b) =>
        a.Project == b.Project && a.Planned.AnyOf is { } group && group == b.Planned.AnyOf;

    private static string Names(StudyPart[] parts)
    {
        string[] names = [.. parts.Take(MostNamed).Select(Name)];
        int more = parts.Length - names.Length;
        return more > 0
            ? $"{string.Join(", ", names)} and {more} more"
            : $"{string.Join(", ", names[..^1])} and {names[^1]}";
    }

    private static string Name(StudyPart part) =>
        part.Examined!.Object is { } inside ? $"{part.Examined.File} · {inside}" : part.Examined.File;
}
