using System.Globalization;
using System.Text;
using Microsoft.VisualBasic.FileIO;
using Platewright.Formats.Toml;

namespace Platewright.Study.Learning;

/// <summary>A log of jobs that really ran: a CSV file with a header.</summary>
public static class JobLog
{
    private static readonly string[] Columns =
        ["file", "part", "machine", "recipe", "material", "measured_time", "energy_kwh", "note"];

    private static readonly string[] Needed = ["file", "machine", "measured_time"];

    /// <summary>A log without jobs, with a line that says how to fill it.</summary>
    public static string Blank { get; } = string.Join(
        "\r\n", string.Join(',', Columns),
        "\"# One job a line. file: model or motion program, from this folder. machine, recipe: as in estimate. "
        + "measured_time: h:mm or h:mm:ss, from start to release. energy_kwh: leave empty if not metered. Delete this line.\"", "");

    /// <summary>Reads a log.</summary>
    /// <exception cref="DescriptionException">Each thing wrong with its line, its column and what was expected.</exception>
    /// <exception cref="IOException">It cannot be read.</exception>
    public static IReadOnlyList<PastJob> Read(string path)
    {
        string shown = path.Replace('\\', '/');
        if (!File.Exists(path)) throw new DescriptionException(new DescriptionError("there is no such file.", shown));
        List<DescriptionError> errors = [];
        List<PastJob> jobs = [];
        using TextFieldParser parser = new(path, Encoding.UTF8) { Delimiters = [","], HasFieldsEnclosedInQuotes = true, TrimWhiteSpace = true };
        Dictionary<string, int>? columns = null;
        while (!parser.EndOfData)
        {
            int line = (int)parser.LineNumber;
            string[] fields;
            try
            {
                fields = parser.ReadFields()!;
            }
            catch (MalformedLineException)
            {
                errors.Add(new DescriptionError("the quotes of the line do not close.", shown, (int)parser.ErrorLineNumber));
                continue;
            }
            if (columns is null) columns = Header(fields, shown, line, errors);
            else if (!fields[0].StartsWith('#')) Add(jobs, fields, columns, shown, line, errors);
        }
        if (columns is null) errors.Add(new DescriptionError($"it has no header; expected {string.Join(',', Columns)}.", shown));
        if (errors.Count > 0) throw new DescriptionException(errors);
        if (jobs.Count == 0) throw new DescriptionException(new DescriptionError("it holds no jobs.", shown));
        return jobs;
    }

    private static Dictionary<string, int> Header(string[] fields, string file, int line, List<DescriptionError> errors)
    {
        Dictionary<string, int> columns = new(StringComparer.Ordinal);
        for (int i = 0; i < fields.Length; i++)
        {
            if (!Columns.Contains(fields[i]))
            {
                errors.Add(new DescriptionError(
                    $"there is no column \"{fields[i]}\".{Suggestion.Sentence(fields[i], Columns)} Known: {string.Join(", ", Columns)}.",
                    file, line));
            }
            else if (!columns.TryAdd(fields[i], i))
            {
                errors.Add(new DescriptionError("the column stands there twice.", file, line, fields[i]));
            }
        }
        foreach (string needed in Needed.Where(n => !columns.ContainsKey(n)))
            errors.Add(new DescriptionError("the column is missing.", file, line, needed));
        return columns;
    }

    private static void Add(
        List<PastJob> jobs, string[] fields, Dictionary<string, int> columns, string file, int line, List<DescriptionError> errors)
    {
        int before = errors.Count;
        string? Of(string column) =>
            columns.TryGetValue(column, out int i) && i < fields.Length && fields[i].Length > 0 ? fields[i] : null;
        foreach (string needed in Needed.Where(n => columns.ContainsKey(n) && Of(n) is null))
            errors.Add(new DescriptionError("it is empty.", file, line, needed));
        double seconds = 0;
        if (Of("measured_time") is { } time && !TryDuration(time, out seconds))
            errors.Add(new DescriptionError($"expected h:mm or h:mm:ss above 0, found \"{time}\".", file, line, "measured_time"));
        double? energy = null;
        if (Of("energy_kwh") is { } kwh)
        {
            if (double.TryParse(kwh, NumberStyles.Float, CultureInfo.InvariantCulture, out double value) && value > 0 && value < 1e6)
                energy = value;
            else errors.Add(new DescriptionError($"expected a number of kWh above 0, found \"{kwh}\".", file, line, "energy_kwh"));
        }
        if (errors.Count > before || Of("file") is not { } model || Of("machine") is not { } machine) return;
        jobs.Add(new PastJob(line, model, Of("part"), machine, Of("recipe"), Of("material"), seconds, energy));
    }

    /// <summary>h:mm or h:mm:ss.</summary>
    private static bool TryDuration(string text, out double seconds)
    {
        string[] parts = text.Split(':');
        seconds = 0;
        if (parts.Length is not (2 or 3)) return false;
        double unit = 3600;
        for (int i = 0; i < parts.Length; i++, unit /= 60)
        {
            if (!int.TryParse(parts[i], NumberStyles.None, CultureInfo.InvariantCulture, out int value) || (i > 0 && value > 59)) return false;
            seconds += value * unit;
        }
        return seconds > 0;
    }
}

/// <summary>One job that really ran.</summary>
/// <param name="Line">Where the log has it, from 1.</param>
/// <param name="File">Model or motion program, as the log names it.</param>
/// <param name="Part">The object of a file of several; null where it is one part.</param>
/// <param name="MeasuredS">From start to release, s.</param>
/// <param name="EnergyKwh">As metered; null where it was not.</param>
public sealed record PastJob(
    int Line, string File, string? Part, string Machine, string? Recipe, string? Material, double MeasuredS, double? EnergyKwh);
