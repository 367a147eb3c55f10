using System.Collections.Immutable;
using Platewright.Formats.Toml;
using Platewright.Machines;

namespace Platewright.Study;

/// <summary>
/// Reads <c>machines</c>: bundled ones by id or name, others by their files; all bundled where nothing is said.
/// </summary>
internal static class MachineListReader
{
    public static ImmutableArray<Machine> Read(TomlTable root, string folder)
    {
        if (!root.Has("machines")) return MachineCatalog.Bundled;
        if (root.Texts("machines") is not { } names) return [];
        if (names.IsEmpty)
            root.Refuse("machines", "expected at least one machine; leave the key out for all bundled ones.");
        List<Machine> machines = [];
        foreach (TomlText name in names)
        {
            if (Find(root, name, folder) is not { } machine) continue;
            if (machines.Any(m => m.Id == machine.Id))
                root.Refuse(name.Place, $"another machine of the study already has the id \"{machine.Id}\".");
            machines.Add(machine);
        }
        return [.. machines];
    }

    private static Machine? Find(TomlTable root, TomlText name, string folder)
    {
        if (MachineCatalog.FindBundled(name.Text) is { } bundled) return bundled;
        if (!MachineCatalog.LooksLikePath(name.Text))
        {
            root.Refuse(name.Place, MachineCatalog.UnknownSentence(name.Text));
            return null;
        }
        string full = StudyPaths.Full(folder, name.Text);
        if (!File.Exists(full))
        {
            root.Refuse(name.Place, $"there is no machine file \"{name.Text}\" beside the study file.");
            return null;
        }
        try
        {
            return MachineFile.Read(full);
        }
        catch (DescriptionException e)
        {
            foreach (DescriptionError error in e.Errors)
                root.Refuse(name.Place, $"the machine file cannot be used: {error with { File = name.Text }}");
            return null;
        }
    }
}
