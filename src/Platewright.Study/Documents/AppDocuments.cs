using System.ComponentModel.DataAnnotations;
using System.Text.Json.Nodes;
using System.Text.Json.Serialization;

namespace Platewright.Study.Documents;

/// <summary>Why a request was not carried out.</summary>
/// <param name="Error">One sentence: what was wrong and what to do.</param>
/// <param name="Fields">What stands wrong where in what was sent; empty where the request as a whole was refused.</param>
public sealed record RefusalDocument(string Error, IReadOnlyList<FieldErrorDocument> Fields)
{
    [JsonPropertyOrder(-1)]
    public int Format { get; init; } = 1;
}

/// <param name="Key">Dotted key with list positions counted from 1, as <c>project[2].part[1].file</c>; null for the whole.</param>
/// <param name="Line">In the text, counted from 1; null where there is no text.</param>
public sealed record FieldErrorDocument(string? Key, int? Line, string Message);

/// <summary>The studies that the local app keeps.</summary>
/// <param name="Studies">The one changed last first.</param>
public sealed record StudiesDocument(IReadOnlyList<KeptStudyDocument> Studies)
{
    [JsonPropertyOrder(-1)]
    public int Format { get; init; } = 1;
}

/// <summary>One study that the local app keeps.</summary>
/// <param name="OpenedFrom">The study file or folder outside the app that it was opened from; null for one of its own.</param>
/// <param name="Edited">Whether its settings differ from those of the file it was opened from.</param>
/// <param name="Files">Model files put into it; 0 for one that was opened from outside.</param>
/// <param name="Changed">When its settings or files were changed last.</param>
/// <param name="Result">What its last finished run found; null where none has finished.</param>
public sealed record KeptStudyDocument(
    string Id, string Name, string? OpenedFrom, bool Edited, int Files, DateTimeOffset Changed, RunDocument Run, ResultDocument? Result)
{
    [JsonPropertyOrder(-1)]
    public int Format { get; init; } = 1;
}

/// <param name="Current">False where settings or files changed since.</param>
public sealed record ResultDocument(
    string Headline, int Machines, int Projects, int Parts, int Unusable, DateTimeOffset At, bool Current);

/// <summary>How a run of a study stands.</summary>
/// <param name="State">idle, waiting, going, stopping, stopped, finished or failed.</param>
/// <param name="Stage">What is done now, in words; null where nothing is.</param>
/// <param name="Done">Of <paramref name="Items"/> things in this stage.</param>
/// <param name="Last">The file or part that was finished last.</param>
/// <param name="Stages">Stages that are through.</param>
/// <param name="Sentence">What there is to say: why it failed, that it can go on.</param>
/// <param name="Faults">What is wrong in the settings, where that is why it failed.</param>
public sealed record RunDocument(
    [property: AllowedValues("idle", "waiting", "going", "stopping", "stopped", "finished", "failed")] string State, string? Stage, int Done, int Items, string? Last, IReadOnlyList<StageDoneDocument> Stages, string? Sentence,
    IReadOnlyList<FieldErrorDocument> Faults)
{
    public static readonly RunDocument Idle = new("idle", null, 0, 0, null, [], null, []);
}

public sealed record StageDoneDocument(string Stage, int Items);

/// <summary>What a new study is called.</summary>
public sealed record NewStudyDocument(string Name);

/// <summary>A description (study, machine, recipe) as a value for a form and as text.</summary>
/// <param name="Settings">The value that the schema describes.</param>
/// <param name="Text">The same as TOML, with comments.</param>
/// <param name="MachineChoices">For a study: what may stand in <c>machines</c>.</param>
/// <param name="Faults">What is wrong in it now.</param>
public sealed record SettingsDocument(
    JsonObject Settings, string Text, IReadOnlyList<MachineChoiceDocument> MachineChoices, IReadOnlyList<FieldErrorDocument> Faults)
{
    [JsonPropertyOrder(-1)]
    public int Format { get; init; } = 1;
}

/// <param name="Value">What a study file says.</param>
public sealed record MachineChoiceDocument(string Value, string Name, string Summary);

/// <summary>Settings to take in place of those there are: one of the two.</summary>
public sealed record NewSettingsDocument(JsonObject? Settings, string? Text);

/// <summary>The model files of a study.</summary>
public sealed record FilesDocument(IReadOnlyList<KeptFileDocument> Files)
{
    [JsonPropertyOrder(-1)]
    public int Format { get; init; } = 1;
}

/// <param name="Path">Below the study's models, with forward slashes.</param>
public sealed record KeptFileDocument(string Path, long Bytes);

/// <summary>What became of files that were sent.</summary>
/// <param name="Kept">Paths under which they now lie; the same content twice is kept once.</param>
/// <param name="Refused">Those that were not taken, each with a sentence.</param>
public sealed record UploadDocument(IReadOnlyList<string> Kept, IReadOnlyList<UnusableDocument> Refused)
{
    [JsonPropertyOrder(-1)]
    public int Format { get; init; } = 1;
}

/// <summary>Assumptions to change, by their keys in the study file, as <c>cost.energy_per_kwh</c>.</summary>
public sealed record WhatIfDocument(IReadOnlyDictionary<string, double> Changes);

/// <summary>Machines that the app knows.</summary>
public sealed record MachinesDocument(IReadOnlyList<KnownMachineDocument> Machines)
{
    [JsonPropertyOrder(-1)]
    public int Format { get; init; } = 1;
}

/// <param name="Own">Whether it is the user's and may be changed.</param>
/// <param name="Summary">One line: size, heat, price.</param>
public sealed record KnownMachineDocument(string Id, string Name, bool Own, string Summary);

/// <summary>A machine that was just described.</summary>
/// <param name="Notes">What its owner should check.</param>
public sealed record NewMachineDocument(string Id, string Name, IReadOnlyList<string> Notes)
{
    [JsonPropertyOrder(-1)]
    public int Format { get; init; } = 1;
}

/// <summary>Names that a study file may use.</summary>
public sealed record NamesDocument(IReadOnlyList<NamedDocument> Materials, IReadOnlyList<NamedDocument> Recipes)
{
    [JsonPropertyOrder(-1)]
    public int Format { get; init; } = 1;
}

/// <param name="Sentence">What it is, in one sentence.</param>
public sealed record NamedDocument(string Name, string Sentence, bool Own);
