using System.CommandLine;
using Platewright.Cli.Display;
using Platewright.Machines;
using static Platewright.Cli.Display.TextGrid;

namespace Platewright.Cli.Commands;

/// <summary><c>platewright machine list</c>, <c>machine show M</c> and <c>machine new</c>.</summary>
internal static class MachineCommand
{
    public static Command Create(Screen screen, CancellationToken cancel) => new(
        "machine", "List the bundled generic machines, show one machine, or write a new machine file.")
    {
        List(screen), Show(screen), MachineNewCommand.Create(screen, cancel),
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
        Command command = new("show", "What is known of one machine, and how far.") { name };
        command.SetAction(parsed =>
        {
            MachineView.Write(screen, MachineCatalog.Find(parsed.GetRequiredValue(name)));
            return ExitCode.Done;
        });
        return command;
    }
}
