using Platewright.Formats.Toml;

namespace Platewright.Machines;

/// <summary>One number of a machine that may be known only roughly.</summary>
/// <param name="Key">Where it stands in the file, as <c>motion.acceleration_mm_s2</c>.</param>
/// <param name="Meaning">What it is, in a few words.</param>
/// <param name="Allowed">Which numbers it takes, with its unit.</param>
/// <param name="Of">Its value; null where the machine does not state it.</param>
/// <param name="With">The machine with another value; only for machines that state it.</param>
public sealed record MachineParameter(
    string Key, string Meaning, NumberRange Allowed, Func<Machine, double?> Of, Func<Machine, double, Machine> With)
{
    public string Unit => Allowed.Unit;

    /// <summary>The range it is believed to lie in; null where it is taken as known.</summary>
    public ValueRange? RangeOf(Machine machine) => machine.Ranges.TryGetValue(Key, out ValueRange range) ? range : null;

    /// <summary>What it usually is on machines of a class, with its range and source.</summary>
    public TypicalValue TypicalOf(MachineClass kind) => TypicalValues.Of(Key, kind);
}
