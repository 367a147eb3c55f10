using Platewright.Build.Heat;
using Platewright.Machines;

namespace Platewright.Build.Estimates;

/// <summary>
/// The error of an estimate from what nobody measured: each value with a range is put to both its ends, one at a time, and what
/// that changes is added in quadrature to the model's own error.
/// </summary>
internal static class RangeError
{
    /// <param name="heat">The machine and the material.</param>
    /// <param name="timeS">The estimate, s.</param>
    /// <param name="energyJ">The estimate, J.</param>
    /// <param name="at">Time s and energy J with one parameter at another value.</param>
    public static (ModelError Time, ModelError Energy) Of(
        MachineHeat heat, double timeS, double energyJ,
        Func<MachineParameter, MachineHeat, (double TimeS, double EnergyJ)> at)
    {
        List<(double, double)> time = [], energy = [];
        foreach (MachineParameter parameter in MachineParameters.All)
        {
            if (parameter.RangeOf(heat.Machine) is not { } range) continue;
            (double TimeS, double EnergyJ) low = With(range.Low), high = With(range.High);
            time.Add(Spread(timeS, low.TimeS, high.TimeS));
            energy.Add(Spread(energyJ, low.EnergyJ, high.EnergyJ));

            (double TimeS, double EnergyJ) With(double value) =>
                at(parameter, new MachineHeat(parameter.With(heat.Machine, value), heat.Material, heat.RoomC));
        }
        return (
            new ModelError(-ModelError.PriorTime, ModelError.PriorTime, ModelError.Prior).With(time),
            new ModelError(-ModelError.PriorEnergy, ModelError.PriorEnergy, ModelError.Prior).With(energy));
    }

    /// <summary>Whether a parameter changes how the machine moves, and not its heat alone.</summary>
    public static bool Moves(MachineParameter parameter) => !parameter.Key.StartsWith("heating.", StringComparison.Ordinal);

    private static (double Low, double High) Spread(double middle, double a, double b) => middle > 0
        ? (Math.Min(0, Math.Min(a, b) / middle - 1), Math.Max(0, Math.Max(a, b) / middle - 1))
        : (0, 0);
}
