using System.Globalization;
using Platewright.Formats.Toml;

namespace Platewright.Machines;

/// <summary>Machines given on the command line by their size alone: no margin, no keep-out, heat not stated.</summary>
public static class MachineArguments
{
    /// <summary>A box from <c>X,Y,Z</c>, mm.</summary>
    /// <exception cref="DescriptionException">Not three sizes.</exception>
    public static Machine Box(string text)
    {
        double[] size = Sizes("--box", text, "X,Y,Z: width, depth and height in mm, as 200,200,180", 3);
        return new Machine { Name = $"box {Joined(size)}", BuildVolume = new BoxVolume(size[0], size[1], size[2]) };
    }

    /// <summary>A cylinder from <c>D,H</c>, mm.</summary>
    /// <exception cref="DescriptionException">Not two sizes.</exception>
    public static Machine Cylinder(string text)
    {
        double[] size = Sizes("--cylinder", text, "D,H: diameter and height in mm, as 200,180", 2);
        return new Machine { Name = $"cylinder {Joined(size)}", BuildVolume = new CylinderVolume(size[0], size[1]) };
    }

    /// <summary>The machine with one margin at every wall and at the top, in place of its own.</summary>
    /// <param name="marginMm">0 or more, mm.</param>
    /// <exception cref="DescriptionException">The margin is negative or leaves no room.</exception>
    public static Machine WithMargin(Machine machine, double marginMm)
    {
        if (!MachineRanges.Margin.Contains(marginMm))
            throw Refused("--margin", $"expected a number {MachineRanges.Margin}.");
        Margins margins = Margins.Uniform(marginMm);
        return MarginsReader.Fault(machine.BuildVolume, margins) is { } fault
            ? throw Refused("--margin", fault)
            : machine with { Margins = margins };
    }

    private static double[] Sizes(string argument, string text, string expected, int count)
    {
        string[] words = text.Split(',', StringSplitOptions.TrimEntries);
        double[] sizes = new double[words.Length];
        bool read = words.Length == count;
        for (int i = 0; read && i < count; i++)
        {
            read = double.TryParse(words[i], NumberStyles.Float, CultureInfo.InvariantCulture, out sizes[i])
                && MachineRanges.Size.Contains(sizes[i]);
        }
        return read
            ? sizes
            : throw Refused(argument, $"expected {expected}, each {MachineRanges.Size}, found \"{text}\".");
    }

    private static DescriptionException Refused(string argument, string message) =>
        new(new DescriptionError(message, Key: argument));

    private static string Joined(double[] sizes) =>
        string.Join(" x ", sizes.Select(s => s.ToString(CultureInfo.InvariantCulture)));
}
