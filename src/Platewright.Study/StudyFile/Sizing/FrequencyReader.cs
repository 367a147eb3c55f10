using Platewright.Formats.Toml;

namespace Platewright.Study;

/// <summary>Reads how often a project is made: <c>times</c> and <c>per</c>, or <c>share_of_work</c>.</summary>
internal static class FrequencyReader
{
    private static readonly NumberRange Times = new(0, 1_000_000);

    private static readonly NumberRange Share = new(0, 1);

    private static readonly string[] Periods = ["week", "month", "year"];

    private const double MonthsPerYear = 12;

    /// <summary>Mean length of a year, days; a month is a twelfth of it.</summary>
    private const double DaysPerYear = 365.25;

    private const double DaysPerWeek = 7;

    public static Frequency Read(TomlTable table)
    {
        double? times = table.Number("times", Times);
        string? per = table.Word("per", Periods);
        double? share = table.Number("share_of_work", Share);
        string? printed = table.Text("printed_parts_of");
        if (times is not null && !table.Has("per")) table.Refuse("times", "expected per = \"week\", \"month\" or \"year\" beside it.");
        if (per is not null && !table.Has("times")) table.Refuse("per", "expected times beside it: how often in that time.");
        if (times is not null && share is not null) table.Refuse("share_of_work", "expected only one of times and share_of_work.");
        if (printed is not null && (times is not null || share is not null))
        {
            table.Refuse("printed_parts_of", "the printed parts of a machine are made once, for it: they have no times and no share.");
        }
        return new Frequency(times * MonthlyFactor(per), share, printed);
    }

    /// <summary>Times in a month for once in a period.</summary>
    public static double MonthlyFactor(string? per) => per switch
    {
        "week" => DaysPerYear / DaysPerWeek / MonthsPerYear,
        "year" => 1 / MonthsPerYear,
        _ => 1,
    };
}
