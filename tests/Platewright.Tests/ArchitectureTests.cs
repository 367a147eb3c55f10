using System.Xml.Linq;

namespace Platewright.Tests;

/// <summary>The order of the rooms: a room may use only rooms above it, and the proof checker uses none.</summary>
public sealed class ArchitectureTests
{
    private static readonly string[] Rooms =
        ["Geometry", "Formats", "Machines", "Fit", "Build", "Planning", "Sizing", "Study", "Report", "Server", "Cli"];

    [Fact]
    public void Rooms_ReferenceOnlyRoomsAbove()
    {
        string src = Path.Combine(Repository.Root, "src");
        foreach (string folder in Directory.GetDirectories(src))
        {
            string room = Path.GetFileName(folder)["Platewright.".Length..];
            int place = Array.IndexOf(Rooms, room);
            foreach (string used in References(folder, room))
            {
                if (room == "Verify") Assert.Fail($"The checker must stand alone, but it uses {used}.");
                if (used == "Verify")
                {
                    Assert.Equal("Cli", room);
                    continue;
                }
                Assert.True(Array.IndexOf(Rooms, used) < place, $"{room} may not use {used}: it is not above it.");
            }
            Assert.True(place >= 0 || room == "Verify", $"{room} is not one of the rooms.");
        }
    }

    private static IEnumerable<string> References(string folder, string room) =>
        XDocument.Load(Path.Combine(folder, $"Platewright.{room}.csproj"))
            .Descendants("ProjectReference")
            .Select(r => Path.GetFileNameWithoutExtension(r.Attribute("Include")!.Value.Replace('\\', '/'))["Platewright.".Length..]);
}
