using System.CommandLine;
using Platewright.Machines;

namespace Platewright.Cli.Commands;

/// <summary>The machines that a command line names: <c>--machine</c>, <c>--box</c> and <c>--cylinder</c>, in this order.</summary>
internal sealed class MachineChoice
{
    private readonly Option<string[]> _machines = new("--machine")
    {
        HelpName = "M",
        Description = "A machine file (.toml) or a bundled generic machine (see: platewright machine list). May be repeated.",
    };

    private readonly Option<string[]> _boxes = new("--box")
    {
        HelpName = "X,Y,Z",
        Description = "A box of this size in mm in place of a machine, without margins. May be repeated.",
    };

    private readonly Option<string[]> _cylinders = new("--cylinder")
    {
        HelpName = "D,H",
        Description = "A round build volume of this diameter and height in mm, without margins. May be repeated.",
    };

    public void AddTo(Command command)
    {
        command.Options.Add(_machines);
        command.Options.Add(_boxes);
        command.Options.Add(_cylinders);
    }

    /// <exception cref="Formats.Toml.DescriptionException">One of them is not right.</exception>
    public IReadOnlyList<Machine> Of(ParseResult parsed) =>
    [
        .. (parsed.GetValue(_machines) ?? []).Select(MachineCatalog.Find),
        .. (parsed.GetValue(_boxes) ?? []).Select(MachineArguments.Box),
        .. (parsed.GetValue(_cylinders) ?? []).Select(MachineArguments.Cylinder),
    ];
}
