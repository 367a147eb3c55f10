using Platewright.Geometry;

namespace Platewright.Tests.Report;

/// <summary>The invented work: 14 projects with 45 parts.</summary>
internal static class FixtureWork
{
    internal sealed record Row(
        string Project, string Name, string Shape, Vec3 Size, string? Material = "PLA", int Quantity = 1,
        string? AnyOf = null, bool Exact = false, double WallMm = 1.2);

    public static IReadOnlyList<Row> Rows { get; } =
    [
        new("Garden shelf", "Shelf bracket left", "bracket", new(142, 140, 22), "ASA", 4),
        new("Garden shelf", "Shelf bracket right", "bracket", new(130, 128, 20), "ASA", 4),
        new("Garden shelf", "Edge clip", "hook", new(32, 28, 14), "ASA", 12),
        new("Garden shelf", "Drip tray", "plate", new(248, 96, 18), "ASA"),
        new("Reading lamp", "Shade", "shade", new(224, 224, 168), "PETG", WallMm: 0.8),
        new("Reading lamp", "Arm lower", "rail", new(28, 24, 262), "PETG"),
        new("Reading lamp", "Arm upper", "rail", new(28, 24, 218), "PETG"),
        new("Reading lamp", "Foot", "knob", new(168, 168, 26), "PETG"),
        new("Bench vice jaws", "Jaw pad", "plate", new(96, 42, 12), "PETG", 2, Exact: true),
        new("Bench vice jaws", "Spindle knob", "knob", new(48, 48, 30), "PETG"),
        new("Gear train clock", "Great wheel", "gear", new(152, 152, 8), Exact: true),
        new("Gear train clock", "Third wheel", "gear", new(96, 96, 8), Exact: true),
        new("Gear train clock", "Escape wheel", "gear", new(64, 64, 6), Exact: true),
        new("Gear train clock", "Back plate", "plate", new(196, 188, 6)),
        new("Gear train clock", "Pendulum rod", "rail", new(12, 10, 318)),
        new("Rain funnel", "Funnel wide", "funnel", new(286, 286, 210), "ASA", 1, "funnel"),
        new("Rain funnel", "Funnel slim", "funnel", new(198, 198, 190), "ASA", 1, "funnel"),
        new("Rain funnel", "Hose tail", "tube", new(32, 32, 64), "ASA"),
        new("Meter box", "Housing", "box", new(178, 122, 64), "PC"),
        new("Meter box", "Lid", "plate", new(182, 126, 14), "PC"),
        new("Meter box", "Cable gland", "tube", new(26, 26, 30), "PC", 3),
        new("Drawer runners", "Runner left", "rail", new(24, 14, 388), "PETG", 2),
        new("Drawer runners", "Runner right", "rail", new(24, 14, 388), "PETG", 2),
        new("Drawer runners", "End stop", "hook", new(22, 18, 16), "PETG", 4),
        new("Drill guide", "Guide block", "box", new(84, 52, 46), "PETG"),
        new("Drill guide", "Fence", "bracket", new(148, 62, 38), "PETG"),
        new("Drill guide", "Bush", "tube", new(14, 14, 28), "PETG", 6, Exact: true),
        new("Stage crown", "Crown ring", "tube", new(204, 204, 92), WallMm: 0.9),
        new("Stage crown", "Gem seat", "knob", new(28, 28, 12), Quantity: 8),
        new("Lens stand", "Column", "tube", new(62, 62, 232), "PETG"),
        new("Lens stand", "Base", "knob", new(138, 138, 20), "PETG"),
        new("Lens stand", "Stage plate", "plate", new(122, 108, 8), "PETG"),
        new("Lens stand", "Focus wheel", "gear", new(54, 54, 12), "PETG", 2),
        new("Wheel arch trim", "Trim front", "bracket", new(372, 182, 46), "ASA"),
        new("Wheel arch trim", "Trim rear", "bracket", new(348, 176, 46), "ASA"),
        new("Wheel arch trim", "Clip", "hook", new(24, 20, 12), "ASA", 16),
        new("Paper vane", "Vane", "plate", new(118, 84, 2), "PLA", 3, WallMm: 0.3),
        new("Paper vane", "Hub", "knob", new(36, 36, 22)),
        new("Helmet mould", "Mould half", "wanted", new(265, 240, 310), "PETG", 2),
        new("Sign letters", "Letter A", "hook", new(232, 242, 30), "PETG", 1, "letters"),
        new("Sign letters", "Letter A small", "hook", new(162, 170, 24), "PETG", 1, "letters", WallMm: 0.3),
        new("Sign letters", "Stand", "rail", new(22, 18, 240), "PETG", 2),
        new("Sign letters", "Foot left", "bracket", new(58, 44, 18), "PETG"),
        new("Sign letters", "Foot right", "bracket", new(58, 44, 18), "PETG"),
        new("Sign letters", "Spacer", "tube", new(18, 18, 20), "PETG", 8),
    ];
}
