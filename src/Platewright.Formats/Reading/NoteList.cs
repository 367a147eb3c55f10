namespace Platewright.Formats.Reading;

/// <summary>Notes as they come up, kept short: a file with thousands of like faults says so a few times only.</summary>
internal sealed class NoteList
{
    private const int MostOfOneCode = 20;

    private readonly List<ModelNote> _notes = [];

    public IReadOnlyList<ModelNote> Notes => _notes;

    public void Add(string code, string message)
    {
        int alike = _notes.Count(n => n.Code == code);
        if (alike < MostOfOneCode) _notes.Add(new ModelNote(code, Printable.OneLine(message)));
        else if (alike == MostOfOneCode) _notes.Add(new ModelNote(code, "More of the same follow."));
    }
}
