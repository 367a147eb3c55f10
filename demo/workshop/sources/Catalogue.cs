using Platewright.Demo.Families;
using Platewright.Demo.School;
using Platewright.Demo.Writing;

namespace Platewright.Demo;

/// <summary>Every file of the demos: of the workshop, and of the school.</summary>
public static class Catalogue
{
    /// <summary>The sound models that are files of their own; each is modelled when it is first asked for.</summary>
    public static IReadOnlyList<Lazy<Model>> Models { get; } = Lazily(
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
    ]);

    /// <summary>The sound models that share one zipped pack.</summary>
    public static IReadOnlyList<Lazy<Model>> Packed { get; } = Lazily(Drawers.Packed);

    /// <summary>The school's models, all sound, each a file of its own.</summary>
    public static IReadOnlyList<Lazy<Model>> SchoolModels { get; } = Lazily(
    [
        .. ClassSets.Models,
        .. Mechanics.Models,
        .. Classroom.Models,
    ]);

    /// <summary>
    /// Path below the workshop's folder of models, and content: sound files, one pack, and two files broken on purpose.
    /// </summary>
    public static IEnumerable<(string Path, byte[] Content)> Files()
    {
        foreach (Lazy<Model> model in Models) yield return (model.Value.Path, FileWriter.Bytes(model.Value));
        yield return ("drawer-boxes/boxes.zip",
            Packages.Zip(Packed.Select(m => (m.Value.Path, FileWriter.Bytes(m.Value)))));
        yield return ("dust-hose/reducer-100-63 old.stl", Broken.CutShort());
        yield return ("workshop-clock/dial from mail.3mf", Broken.WrongObject());
    }

    /// <summary>Path below the school's folder of models, and content.</summary>
    public static IEnumerable<(string Path, byte[] Content)> SchoolFiles() =>
        SchoolModels.Select(m => (m.Value.Path, FileWriter.Bytes(m.Value)));

    private static IReadOnlyList<Lazy<Model>> Lazily(IReadOnlyList<Func<Model>> makers) =>
        [.. makers.Select(make => new Lazy<Model>(make))];
}
