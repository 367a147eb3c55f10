using Platewright.Build.Motion;
using Platewright.Build.Paths;
using Platewright.Machines;

namespace Platewright.Build.Estimates;

/// <summary>A machine as the paths of one part meet it: its limits with the material's melt rate.</summary>
internal sealed class DrivenMachine
{
    /// <summary>
    /// On a bed that moves, a part more than this many times as high as its foot is wide is accelerated less along y, in
    /// proportion: common practice, no source.
    /// </summary>
    private const double SlenderRatio = 3;

    private const double LeastShare = 0.1;

    private readonly MotionLimits _limits;
    private readonly MotionLimits _firstLayer;
    private readonly double _meltRate;
    private readonly double _pullBackS;
    private readonly double _footMm;
    private readonly MotionPlanner _planner = new();
    private Move[] _moves = [];

    public DrivenMachine(Machine machine, Material material, PartPaths part)
    {
        _limits = machine.Motion
            ?? throw new ArgumentException($"The machine {machine.Name} states no motion limits.", nameof(machine));
        _firstLayer = _limits.FirstLayerSpeedMmS is { } slow
            ? _limits with { SpeedMmS = Math.Min(slow, _limits.SpeedMmS) } : _limits;
        _meltRate = machine.Extruder.MeltRateMm3S * material.MeltRateFactor ?? double.PositiveInfinity;
        _pullBackS = 2 * machine.Extruder.RetractionMm / machine.Extruder.RetractionSpeedMmS;
        _footMm = 2 * Math.Sqrt(part.ContactAreaMm2 / Math.PI);
    }

    /// <summary>Time and material of a layer.</summary>
    /// <param name="plan">Its moves.</param>
    /// <param name="first">True for the first layer, whose extruding speed has a limit of its own.</param>
    /// <param name="topMm">How high it lies, mm.</param>
    public MotionTimes Time(LayerPlan plan, bool first, double topMm)
    {
        if (_moves.Length < plan.Moves.Length) _moves = new Move[2 * plan.Moves.Length];
        for (int i = 0; i < plan.Moves.Length; i++)
        {
            Move move = plan.Moves[i];
            if (move.StandstillS > 0) move = move with { StandstillS = _pullBackS };
            if (first && move.Kind != PathKind.Travel)
                move = move with { SpeedMmS = Math.Min(move.SpeedMmS, _firstLayer.SpeedMmS) };
            _moves[i] = move;
        }
        double share = _limits.MovingBed && topMm > SlenderRatio * _footMm
            ? Math.Max(LeastShare, SlenderRatio * _footMm / topMm) : 1;
        return _planner.Plan(plan.Start, _moves.AsSpan(0, plan.Moves.Length), _limits, _meltRate, share);
    }
}
