using System.Globalization;
using Platewright.Machines;
using Spectre.Console;
using static Platewright.Cli.Display.TextGrid;

namespace Platewright.Cli.Display;

/// <summary>All that is known of one machine, and how far: two grids.</summary>
internal static class MachineView
{
    public static void Write(Screen screen, Machine m)
    {
        TextGrid about = new(screen.Columns);
        about.Add("name", $"{m.Name}{(m.Generic ? " (generic: a class of machines, not one of them)" : "")}");
        about.Add("build volume", MachineText.Volume(m.BuildVolume));
        about.Add("margins", MachineText.Margins(m.Margins));
        about.Add("keep-outs", m.KeepOuts.IsEmpty ? "none" : string.Join("; ", m.KeepOuts.Select(MachineText.Box)));
        about.Add("heats to", MachineText.Heat(m));
        about.Add("enclosed", m.Enclosed switch { true => "yes", false => "no", null => "not stated" });
        about.Add("price", MachineText.Price(m));
        about.Add("motion", Motion(m));
        about.Add("heating", Heating(m));
        if (m.Note is { } note) about.Add("note", note);
        about.Write(screen.Result);
        screen.Result.WriteLine();

        TextGrid numbers = new(screen.Columns);
        numbers.Add(new Cell("value", "bold"), new Cell("", "bold", Right: true), new Cell("unit", "bold"), new Cell("believed between", "bold"));
        foreach (MachineParameter parameter in MachineParameters.All)
        {
            if (parameter.Of(m) is not { } value) continue;
            (Cell name, Cell number) = (Capital(parameter.Meaning), new Cell(Number(value), Right: true));
            if (parameter.RangeOf(m) is { } range)
                numbers.Add(name, number, parameter.Unit, $"{Number(range.Low)} and {Number(range.High)}");
            else
                numbers.Add(name, number, parameter.Unit);
        }
        numbers.Write(screen.Result);
    }

    private static string Motion(Machine m) => m.Motion switch
    {
        null => "not stated: no time is estimated",
        { MovingBed: true } => "the bed carries the part in y",
        _ => "the part stands still in x and y",
    };

    private static string Heating(Machine m)
    {
        if (m.Heating is not { } heating) return "not stated: no warm-up, no energy";
        string[] heaters =
        [
            .. heating.Nozzle is null ? [] : (string[])["nozzle"],
            .. heating.Bed is null ? [] : (string[])["bed"],
            .. heating.Chamber is null ? [] : (string[])["chamber"],
        ];
        string walls = heating.Enclosure is { } e
            ? $"; enclosure {Number(e.WidthMm)} × {Number(e.DepthMm)} × {Number(e.HeightMm)} mm inside"
                + (e.CanBeVented ? "" : ", cannot be opened")
            : "";
        return (heaters.Length > 0 ? $"heaters for {string.Join(", ", heaters)}" : "no heaters") + walls;
    }

    private static string Capital(string text) => char.ToUpperInvariant(text[0]) + text[1..];

    private static string Number(double value) => value.ToString("0.#####", CultureInfo.InvariantCulture);
}
