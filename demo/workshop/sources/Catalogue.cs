using Platewright.Demo.Families;
using Platewright.Demo.Writing;

namespace Platewright.Demo;

/// <summary>Every file of the workshop.</summary>
public static class Catalogue
{
    public static IEnumerable<Model> Models() => Makers.Select(make => make());

    public static IReadOnlyList<Func<Model>> Makers { get; } =
    [
        () => Model.Stl("barrow-winch/wheel-52.stl", Gears.Spur(2, 52, 14, Gears.FlattedBore(6), 13, 6)),
        () => Model.Stl("barrow-winch/pinion-14.stl", Gears.Spur(2, 14, 16, Gears.FlattedBore(5), 0, 0)),
        () => Model.Stl("barrow-winch/pinion-herringbone.stl",
            Gears.Herringbone(2, 16, 20, Gears.FlattedBore(5), 28, 6)),
        () => Model.Stl("shed-sensor/housing.stl", new Enclosures(96, 72, 34).Housing(5, 5, 5)),
        () => Model.Stl("shed-sensor/lid.stl", new Enclosures(96, 72, 34).Lid()),
        () => Model.Stl("tool-wall/angle.stl", Brackets.Angle(60, 80, 30, 5)),
        () => Model.Stl("tool-wall/shelf-bracket.stl", Brackets.Shelf(180, 140, 32)),
        () => Model.Stl("sewing-table/motor-plate.stl", Brackets.MotorPlate(130, 80)),
        () => Model.Stl("rain-barrel/funnel.stl", Funnels.Funnel(158, 28, 150)),
        () => Model.Stl("rain-barrel/strainer.stl", Funnels.Strainer(120, 40)),
        () => Model.Stl("rain-barrel/hose-tail.stl", Funnels.HoseTail(25, 60, 62)),
        () => Model.Stl("dust-hose/reducer.stl", Funnels.Reducer(100, 63, 120)),
        () => Model.Stl("tool-wall/rail.stl", Rails.Dovetail(284, 5)),
        () => Model.Stl("cable-run/duct.stl", Rails.Duct(400, 40, 34)),
        () => Model.Stl("sewing-table/edge-strip.stl", Rails.EdgeStrip(310)),
        () => Model.Stl("reading-room/shade-fluted.stl", Shades.Fluted(200, 90, 180, 12, 60)),
        () => Model.Stl("reading-room/shade-faceted.stl", Shades.Faceted(150, 220, 100, 210, 12)),
        () => Model.Stl("reading-room/rose.stl", Shades.Rose(100, 46)),
        () => Model.Stl("balcony/pot.stl", Pots.Pot(160, 150)),
        () => Model.Stl("balcony/saucer.stl", Pots.Saucer(150)),
    ];

    /// <summary>Path below the folder of models, and content.</summary>
    public static IEnumerable<(string Path, byte[] Content)> Files() =>
        Models().Select(model => (model.Path, FileWriter.Bytes(model)));
}
