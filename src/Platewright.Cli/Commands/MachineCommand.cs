using System.CommandLine;
using Platewright.Cli.Display;
using Platewright.Machines;
using static Platewright.Cli.Display.TextGrid;

namespace Platewright.Cli.Commands;

/// <summary><c>platewright machine list</c> and <c>machine show M</c>.</summary>
internal static class MachineCommand
{
    public static Command Create(Screen screen) => new("machine", "List the bundled generic machines, or show one machine.")
    {
        List(screen), Show(screen),
    };

    private static Command List(Screen screen)
    {
        Command command = new("list", "The bundled generic machines. Each stands for a class of machines and copies none.");
        command.SetAction(_ =>
        {
            TextGrid grid = new(screen.Columns);
            grid.Add(new Cell("id", "bold"), new Cell("build volume", "bold"), new Cell("heats to", "bold"), new Cell("price", "bold"));
            foreach (Machine m in MachineCatalog.Bundled) grid.Add(m.Id, MachineText.Volume(m.BuildVolume), MachineText.Heat(m), MachineText.Price(m));
            grid.Write(screen.Result);
            return ExitCode.Done;
        });
        return command;
    }

    private static Command Show(Screen screen)
    {
        Argument<string> name = new("MACHINE") { Description = "A machine file (.toml) or a bundled generic machine." };
        name.Validators.Add(Options.RefuseOptions);
        Command command = new("show", "What is known of one machine.") { name };
        command.SetAction(parsed =>
        {
            Machine m = MachineCatalog.Find(parsed.GetRequiredValue(name));
            TextGrid grid = new(screen.Columns);
            grid.Add("name", $"{m.Name}{(m.Generic ? " (generic: a class of machines, not one of them)" : "")}");
            grid.Add("build volume", MachineText.Volume(m.BuildVolume));
            grid.Add("margins", MachineText.Margins(m.Margins));
            grid.Add("keep-outs", m.KeepOuts.IsEmpty ? "none" : string.Join("; ", m.KeepOuts.Select(MachineText.Box)));
            grid.Add("heats to", MachineText.Heat(m));
            grid.Add("enclosed", m.Enclosed switch { true => "yes", false => "no", null => "not stated" });
            grid.Add("price", MachineText.Price(m));
            if (m.Note is { } note) grid.Add("note", note);
            grid.Write(screen.Result);
            return ExitCode.Done;
        });
        return command;
    }
}
