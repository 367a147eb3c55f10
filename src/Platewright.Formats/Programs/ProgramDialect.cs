namespace Platewright.Formats.Programs;

/// <summary>Whose habits a motion program follows where RS-274 and the trade's extrusion programs differ.</summary>
public enum ProgramDialect
{
    /// <summary>Extrusion programs: G4 P in milliseconds, G0 at the speed of F. Files named .gcode.</summary>
    Extrusion,

    /// <summary>RS-274/NGC: G4 P in seconds, G0 as fast as the machine can. Files named .nc or .ngc.</summary>
    Rs274,
}

/// <summary>The choices of a dialect in plain words.</summary>
internal static class DialectChoices
{
    private static readonly string[] Shared =
    [
        "G91 makes X, Y and Z relative; E follows M82 and M83 alone, and is absolute before either.",
        "G28 takes the named axes, or all, to 0 and undoes G92 on them; its time belongs to the machine's start.",
        "The program starts at 0, 0, 0; G92 shifts coordinates and moves nothing, without words it makes all of them 0.",
        "E is mm of filament; a move of E alone takes its length divided by F.",
        "F is per minute and stays in force; before the first F moves are as fast as the machine can.",
        "I, J and K are measured from where the arc starts; radii may differ by 0.002 mm (0.0002 inch), as in RS-274.",
        "Axis words without a G word repeat the last motion, G1 before any.",
        "M109, M190 and M191 only name a temperature; the waiting is part of the machine's warm-up.",
        "M204 and other words that set limits are passed over; the limits are the machine's.",
        "M220 and M221 scale F and E. M2 and M30 end the program. A line that begins with / is read.",
    ];

    public static IReadOnlyList<string> Of(ProgramDialect dialect) => dialect == ProgramDialect.Rs274
        ? ["G4 P is in seconds, as in RS-274.", "G0 is as fast as the machine can, as in RS-274.", .. Shared]
        :
        [
            "G4 P is in milliseconds and S in seconds, as in the trade.",
            "G0 moves at F like G1, as in the trade.",
            .. Shared,
        ];
}
