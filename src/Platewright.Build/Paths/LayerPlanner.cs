using System.Collections.Immutable;
using Platewright.Build.Layers;
using Platewright.Build.Motion;
using Platewright.Geometry;
using Platewright.Machines;

namespace Platewright.Build.Paths;

/// <summary>Plans the paths of single layers. Not for use by several threads at once.</summary>
internal sealed class LayerPlanner
{
    /// <summary>Lines of solid faces, of infill and of support shorter than these many pitches are left out.</summary>
    private const double ShortestSolid = 0.25;
    private const double ShortestSparse = 0.5;

    private readonly LayeredPart _part;
    private readonly Recipe _recipe;
    private readonly FillDirections _directions;
    private readonly SolidCores _cores;
    private readonly ImmutableArray<Rows> _support;
    private readonly double _brimMm;
    private readonly double _pitch;
    private readonly WallPlanner _walls;
    private readonly GyroidLines? _gyroid;
    private readonly RowScan _scan = new();

    public LayerPlanner(BuildLayers layers)
    {
        (_part, _recipe, _directions) = (layers.Part, layers.Recipe, layers.Directions);
        (_cores, _support, _brimMm, _pitch) = (layers.Cores, layers.Support, layers.BrimMm, layers.PitchMm);
        _walls = new WallPlanner(_pitch, _recipe.Walls);
        if (_recipe is { InfillPattern: InfillPattern.Gyroid, InfillShare: > 0 and < 1 })
            _gyroid = new GyroidLines(_recipe.InfillShare, _pitch);
    }

    public LayerPlan Plan(int layer)
    {
        Section section = _part.Sections[layer];
        double height = _part.Layers[layer].HeightMm;
        double beadArea = _pitch * height;
        List<Path> paths = [];
        if (layer == 0 && _brimMm > 0) BrimPlanner.Add(paths, section, _brimMm, _pitch, height);
        if (!_support.IsEmpty)
        {
            FillChains.Add(
                paths, PathKind.Support, RowChoice.Keep(_support[layer], _recipe.SupportShare), new Vec2(1, 0),
                beadArea, ShortestSparse * _pitch);
        }
        Walled walled = _walls.Plan(section, height);
        paths.AddRange(walled.Paths);
        AddFilling(paths, layer, walled.InsideLoops, beadArea);
        return PathOrder.ToMoves(paths, section, _part.Layers[layer], _pitch, _recipe.Speeds);
    }

    private void AddFilling(List<Path> paths, int layer, IReadOnlyList<Vec2[]> inside, double beadArea)
    {
        if (inside.Count == 0) return;
        int solid = _directions.Solid(layer);
        Rows whole = _scan.Scan(inside, _pitch, _directions.Unit[solid]);
        Rows faces = RowSets.Subtract(whole, _cores.Core(layer, solid));
        if (_recipe.SolidLayers > 0)
        {
            FillChains.Add(
                paths, PathKind.SolidFace, faces, _directions.Unit[solid], beadArea, ShortestSolid * _pitch);
        }
        if (_recipe.InfillShare <= 0) return;
        if (_gyroid is not null)
        {
            // The gyroid stands still: its axes do not turn from layer to layer.
            Rows fixedAxes = solid == 0 ? whole : _scan.Scan(inside, _pitch, _directions.Unit[0]);
            Rows curved = RowSets.Intersect(fixedAxes, _cores.Core(layer, 0));
            _gyroid.Add(paths, curved, _directions.Unit[0], _part.Layers[layer].MiddleMm, beadArea);
            return;
        }
        int[] ways = _directions.Sparse(layer);
        foreach (int d in ways)
        {
            Rows along = d == solid ? whole : _scan.Scan(inside, _pitch, _directions.Unit[d]);
            Rows sparse = RowSets.Intersect(along, _cores.Core(layer, d));
            double shortest = (_recipe.InfillShare < 1 ? ShortestSparse : ShortestSolid) * _pitch;
            FillChains.Add(
                paths, PathKind.Infill, RowChoice.Keep(sparse, _recipe.InfillShare / ways.Length), _directions.Unit[d],
                beadArea, shortest);
        }
    }
}
