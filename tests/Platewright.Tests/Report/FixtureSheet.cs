using Platewright.Study.Documents;

namespace Platewright.Tests.Report;

/// <summary>A decision sheet as long as a real one gets.</summary>
internal static class FixtureSheet
{
    public static SheetDocument Made { get; } = new(
        "Which printer Quay Street workshop needs",
        [Say("Buy 1 × Closed 330 beside the Open 210 that is there, for €2,950.00 with tax.")],
        [
            Say("Together they make 9 of the 14 projects (64 %); the Open 210 alone makes 5 (36 %)."),
            Say("They cost €182.45 a month with owning, energy, filament and failed builds; between €149.60 and €239.00 within the doubt."),
            Say("The work takes 179 machine hours a month of the 760 that the two can give, so neither stands in the other's way."),
        ],
        [
            Say("5 of the 14 projects are not made: Wheel arch trim, Drawer runners, Helmet mould, Paper vane and Stage crown."),
            Say("Nothing warmer than a chamber of 65 °C; no build longer than 10 h goes unattended."),
        ],
        [
            Say("14 projects are a small sample: of all work like it, between 39 and 84 % could be made (95 % interval)."),
            Say("Closed 265 and Closed 330 cannot be told apart on this sample; about 40 more projects would."),
            Say("Who wrote a project down, and what nobody tried because the machine was too small, no interval covers."),
        ],
        [
            Say("1 × Closed 265 costs €96.20 a month and makes 6 of 14 projects."),
            Say("2 × Open 210 cost €74.80 a month, make 5 of 14, and put a part in hand in 5.2 h instead of 12.6 h."),
        ],
        [
            Say("8 % of builds fail (3 to 20 %): assumed for a shared workshop; count your own."),
            Say("Energy costs €0.32 a kWh (€0.22 to €0.45): the study file."),
            Say("A machine is used 5 years (3 to 8): common practice, no source."),
        ],
        [
            Say("Two machines draw up to 1,480 W; do not put them on one extension lead with a heater."),
            Say("ASA and PC give off fumes: use the enclosed machine with its filter and air the room."),
        ]);

    private static SentenceDocument Say(string text) => new(text, text, []);
}
