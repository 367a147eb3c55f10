using Platewright.Geometry;

namespace Platewright.Formats.Programs;

/// <summary>Collects the moves of a program and sums up what they do.</summary>
internal sealed class ProgramTally
{
    /// <summary>Heights closer than this are one layer, mm.</summary>
    private const double LayerStepMm = 0.001;

    private readonly HashSet<long> _heights = [];
    private readonly List<ProgramMove> _moves = [];
    private Bounds3 _all = Bounds3.Empty;
    private Bounds3 _extruding = Bounds3.Empty;
    private double _forwardMm;
    private double _retractedMm;
    private long _lastHeight = long.MinValue;

    public int Count => _moves.Count;

    public double PathMm { get; private set; }

    public double WaitS { get; private set; }

    public void AddMove(Vec3 from, in ProgramMove move, double lengthMm)
    {
        _moves.Add(move);
        WaitS += move.WaitS;
        if (move.FilamentMm > 0) _forwardMm += move.FilamentMm;
        else _retractedMm -= move.FilamentMm;
        if (lengthMm <= 0) return;
        PathMm += lengthMm;
        _all = _all.Including(move.ToMm);
        if (move.FilamentMm <= 0) return;
        _extruding = _extruding.Including(from).Including(move.ToMm);
        long height = (long)Math.Round(move.ToMm.Z / LayerStepMm);
        if (height != _lastHeight) _heights.Add(height);
        _lastHeight = height;
    }

    public MotionProgram ToProgram(
        string file, IReadOnlyList<UnknownWord> unknown, IReadOnlyList<string> choices) => new()
        {
            File = file,
            Moves = _moves.ToArray(),
            PathMm = PathMm,
            AllMm = _all == Bounds3.Empty ? null : _all,
            ExtrudingMm = _extruding == Bounds3.Empty ? null : _extruding,
            Filament = new FilamentUse(_forwardMm, _retractedMm),
            WaitS = WaitS,
            Layers = _heights.Count,
            Unknown = unknown,
            Choices = choices,
        };
}
