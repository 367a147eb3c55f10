using Platewright.Demo.Families;
using Platewright.Demo.Writing;

namespace Platewright.Demo;

/// <summary>Every file of the workshop.</summary>
public static class Catalogue
{
    /// <summary>What makes each sound file of its own.</summary>
    public static IReadOnlyList<Func<Model>> Makers { get; } =
    [
        .. Gears.Models,
        .. Enclosures.Models,
        .. Brackets.Models,
        .. Clips.Models,
        .. Funnels.Models,
        .. Pipes.Models,
        .. Rails.Models,
        .. Shades.Models,
        .. Pots.Models,
        .. Hooks.Models,
        .. Hinges.Models,
        .. Handles.Models,
        .. Spacers.Models,
        .. Drawers.Models,
        .. CableGuides.Models,
        .. ToolHolders.Models,
        .. Jigs.Models,
        .. Wheels.Models,
        .. Telescope.Models,
        .. Clock.Models,
        .. Scales.Models,
        .. Trays.Models,
    ];

    /// <summary>The sound models that share one zipped pack.</summary>
    public static IReadOnlyList<Func<Model>> Packed => Drawers.Packed;

    /// <summary>
    /// Path below the folder of models, and content: sound files, one pack, and two files broken on purpose.
    /// </summary>
    public static IEnumerable<(string Path, byte[] Content)> Files()
    {
        foreach (Func<Model> make in Makers)
        {
            Model model = make();
            yield return (model.Path, FileWriter.Bytes(model));
        }
        yield return ("drawer-boxes/boxes.zip",
            Packages.Zip(Packed.Select(make => make()).Select(m => (m.Path, FileWriter.Bytes(m)))));
        yield return ("dust-hose/reducer-100-63 old.stl", Broken.CutShort());
        yield return ("workshop-clock/dial from mail.3mf", Broken.WrongObject());
    }
}
