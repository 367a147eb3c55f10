using Platewright.Study.Documents;

namespace Platewright.Server.Shelf;

/// <summary>What the app remembers of a study beside its settings and files.</summary>
/// <param name="OpenedFrom">Full path of the study file or folder outside the app; null for one of its own.</param>
/// <param name="OpenedText">Hash of the settings as they were opened; null for one of its own.</param>
/// <param name="Created">When it was begun.</param>
/// <param name="Changed">When its settings or files changed last.</param>
/// <param name="Revision">Goes up by one with each change.</param>
/// <param name="Running">True from the start of a run to its end: found true at the start of the app, the run was killed.</param>
/// <param name="Ended">How the last run ended; null where none did.</param>
/// <param name="Result">What the last finished run found.</param>
/// <param name="ResultRevision">The revision that run saw.</param>
internal sealed record AboutStudy(
    string? OpenedFrom, string? OpenedText, DateTimeOffset Created, DateTimeOffset Changed, int Revision, bool Running,
    RunDocument? Ended, ResultDocument? Result, int ResultRevision);
