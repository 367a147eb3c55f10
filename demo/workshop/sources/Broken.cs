using Platewright.Demo.Families;
using Platewright.Demo.Writing;

namespace Platewright.Demo;

/// <summary>Two files that are broken on purpose, as they turn up in real folders.</summary>
internal static class Broken
{
    /// <summary>A binary STL whose copying stopped on the way: its count promises more triangles than follow.</summary>
    public static byte[] CutShort()
    {
        byte[] whole = FileWriter.Bytes(Model.Stl("reducer-100-63.stl",
            Funnels.Reducer(large: 100, small: 63, length: 120)));
        return whole[..(whole.Length * 2 / 5)];
    }

    /// <summary>A 3MF whose build asks for an object that its resources do not have.</summary>
    public static byte[] WrongObject() => Packages.Edited(
        Packages.ThreeMf(new Model("dial.3mf", FileKind.ThreeMf, Clock.Dial(diameter: 236))), "objectid=\"1\"",
            "objectid=\"7\"");
}
