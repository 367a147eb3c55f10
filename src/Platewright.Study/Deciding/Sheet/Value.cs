using Platewright.Study.Documents;

namespace Platewright.Study.Deciding.Sheet;

/// <summary>A number or name of study.json, by its RFC 6901 pointer and how it is said.</summary>
internal static class Value
{
    public static ValueDocument Text(string at) => new(at, "text");

    /// <summary>A whole number.</summary>
    public static ValueDocument Count(string at) => new(at, "count");

    /// <summary>A share from 0 to 1, said as "78 %".</summary>
    public static ValueDocument Percent(string at) => new(at, "percent");

    /// <summary>In the study's currency.</summary>
    public static ValueDocument Money(string at) => new(at, "money");

    /// <summary>Hours in study.json, said as "12.5 h".</summary>
    public static ValueDocument Hours(string at) => new(at, "hours");

    /// <summary>Seconds in study.json, said as "3:20 h".</summary>
    public static ValueDocument Time(string at) => new(at, "time");

    public static ValueDocument Mm(string at) => new(at, "mm");

    public static ValueDocument M2(string at) => new(at, "m2");

    public static ValueDocument Watts(string at) => new(at, "watts");

    public static ValueDocument Number(string at) => new(at, "number");
}
