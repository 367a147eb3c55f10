using System.CommandLine;
using Platewright.Fit;
using Platewright.Formats.Toml;

namespace Platewright.Cli.Commands;

/// <summary>What a command line lets happen to the parts.</summary>
internal sealed class AllowanceChoice
{
    private readonly Option<bool> _noTurn = new("--no-turn") { Description = "The parts stand as drawn." };
    private readonly Option<bool> _noTilt = new("--no-tilt") { Description = "No angle that needs support underneath." };
    private readonly Option<bool> _noScale = new("--no-scale") { Description = "The parts keep their size." };
    private readonly Option<bool> _noCut = new("--no-cut") { Description = "The parts stay in one piece." };

    private readonly Option<double?> _leastScale = Options.Number(
        "--least-scale", "S", "Smallest scale accepted, above 0, up to 1 (default 0.95).");

    public void AddTo(Command command)
    {
        foreach (Option option in new Option[] { _noTurn, _noTilt, _noScale, _noCut, _leastScale }) command.Options.Add(option);
    }

    /// <exception cref="DescriptionException">A scale out of its range.</exception>
    public Allowance Of(ParseResult parsed)
    {
        double least = parsed.GetValue(_leastScale) ?? new Allowance().LeastScale;
        if (!(least > 0 && least <= 1))
            throw new DescriptionException(new DescriptionError($"expected a number above 0, up to 1, found {least}.", Key: _leastScale.Name));
        return new Allowance(
            !parsed.GetValue(_noTurn), !parsed.GetValue(_noTilt), !parsed.GetValue(_noCut), parsed.GetValue(_noScale) ? 1 : least);
    }
}
