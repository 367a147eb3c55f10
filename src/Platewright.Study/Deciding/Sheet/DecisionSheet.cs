using Platewright.Study.Documents;

namespace Platewright.Study.Deciding.Sheet;

/// <summary>
/// One page in plain language for whoever pays. Every sentence is filled from numbers of study.json and says where they stand,
/// so that it can be rebuilt.
/// </summary>
internal static class DecisionSheet
{
    /// <param name="study">With its sizing complete but for the sheet.</param>
    /// <exception cref="ArgumentException">The study has no sizing or no machine.</exception>
    public static SheetDocument Of(StudyDocument study)
    {
        if (study.Sizing is not { } sizing || study.Machines.Count == 0)
            throw new ArgumentException($"The study \"{study.Name}\" has no sizing to decide by.", nameof(study));
        SheetCase sheet = new(study, sizing);
        return new SheetDocument(
            Title(study, sizing), [.. Recommending.Of(sheet)], [.. Reasoning.Of(sheet)], [.. Lacking.Of(sheet)], [.. Doubting.Of(sheet)],
            [.. Choosing.Of(sheet)], [.. Assuming.Of(sheet)], [.. Cautioning.Of(sheet)]);
    }

    private static string Title(StudyDocument study, SizingDocument sizing) => sizing.Mix switch
    {
        { } mix when mix.Machines.Any(m => m.Count > m.Owned) => $"What to buy for {study.Name}",
        { } => $"What to keep for {study.Name}",
        null => $"Which machine {study.Name} needs",
    };
}
