using Platewright.Build.Estimates;
using Platewright.Build.Motion;
using Platewright.Build.Paths;
using Platewright.Geometry;
using Platewright.Machines;
using Platewright.Tests.Geometry;

namespace Platewright.Tests.Build.Estimates;

/// <summary>Recipes, machines and builds the tests start from.</summary>
internal static class Builds
{
    public static readonly Recipe Recipe = new()
    {
        Name = "probe",
        LayerHeightMm = 0.2,
        BeadWidthMm = 0.45,
        Walls = 2,
        SolidLayers = 4,
        InfillShare = 0.2,
        Speeds = PathSpeeds.All(100),
    };

    /// <summary>All bead: 100 % infill.</summary>
    public static readonly Recipe Solid = Recipe with { InfillShare = 1 };

    /// <summary>The smallest machine file of the command-line contract.</summary>
    public static readonly Machine Machine = new()
    {
        Name = "probe",
        BuildVolume = new BoxVolume(200, 200, 180),
        Motion = new MotionLimits(150, 3000, 0.05),
    };

    /// <summary>No minimum layer time, the melt rate of PLA.</summary>
    public static readonly Material Material = new("probe", new HeatLimits(200, 0, 0), 0, 0, "invented");

    public static double Pitch(Recipe recipe) => Bead.TouchingPitchMm(recipe.BeadWidthMm, recipe.LayerHeightMm);

    public static BuildLayers Layers(Mesh mesh, Recipe recipe, double scale = 1, double brim = 0)
    {
        Mesh welded = Welding.Weld(mesh);
        return BuildLayers.Of(welded, MeshTopology.Of(welded), Matrix3.Identity * scale, recipe, brim, default);
    }

    public static PartPaths Paths(Mesh mesh, Recipe recipe, double scale = 1, double brim = 0)
    {
        Mesh welded = Welding.Weld(mesh);
        return PartPaths.Of(welded, MeshTopology.Of(welded), Matrix3.Identity * scale, recipe, brim, default);
    }

    public static LayerTimes Run(PartPaths paths, Machine? machine = null, bool full = true, double phase = 0.5) =>
        LayerSampler.Run(paths, machine ?? Machine, Material, full, phase, default);

    /// <summary>Time and material of all layers, each of them planned.</summary>
    public static MotionTimes Full(Mesh mesh, Recipe recipe, Machine? machine = null, double scale = 1) =>
        Run(Paths(mesh, recipe, scale), machine).Total;

    public static Mesh Cube(double side) => Solids.Block(default, new(side, side, side));
}
