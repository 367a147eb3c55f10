using Platewright.Formats.Reading;
using Platewright.Geometry;

namespace Platewright.Formats.Programs;

/// <content>Straight moves and arcs.</content>
internal sealed partial class ProgramInterpreter
{
    /// <summary>
    /// Radii of an arc to its start and end may differ by this, mm; RS-274 says so, in inches a tenth.
    /// </summary>
    private const double RadiusToleranceMm = 0.002;

    private const double RadiusToleranceInch = 0.0002;

    private const int MostMoves = 50_000_000;

    private static readonly uint ReadLetters =
        "XYZEIJKRFPSTNGM".Aggregate(0u, (set, letter) => set | LineWords.Bit(letter));

    private void Move()
    {
        Vec3 to = new(Target('X', _at.X, _shift.X), Target('Y', _at.Y, _shift.Y), Target('Z', _at.Z, _shift.Z));
        if (!ReadRequest.IsInRange(to)) throw Refuse("it moves too far", "check the unit");
        double filament = 0;
        if (_words.Has('E'))
        {
            double e = _words['E'] * _unitMm;
            filament = (_relativeE ? e : e - _e) * _flowFactor;
            _e = _relativeE ? _e + e : e;
        }
        if (_motion >= 2) AddArc(to, filament);
        else AddLine(to, filament);
        _at = to;
    }

    private double Target(char axis, double at, double shift) =>
        !_words.Has(axis) ? at : _words[axis] * _unitMm + (_relative ? at : shift);

    private void AddLine(Vec3 to, double filament)
    {
        CheckMoves(1);
        bool rapid = _motion == 0 && dialect == ProgramDialect.Rs274;
        double speed = rapid ? double.PositiveInfinity : Speed;
        _tally.AddMove(_at, new(to, speed, filament, 0, float.PositiveInfinity, _line), (to - _at).Length);
    }

    private void AddArc(Vec3 to, double filament)
    {
        Arc arc = ArcTo(InPlane(_at), InPlane(to));
        double chords = arc.Chords(ProgramReader.ChordToleranceMm), length = arc.Length;
        CheckMoves(chords);
        int count = (int)chords;
        float radius = (float)arc.CurveRadius;
        Vec3 from = _at;
        for (int i = 1; i <= count; i++)
        {
            Vec3 at = i == count ? to : InSpace(arc.At((double)i / count));
            _tally.AddMove(from, new(at, Speed, filament / count, 0, radius, _line), length / count);
            from = at;
        }
    }

    /// <summary>The arc the line asks for; in the plane's own axes.</summary>
    private Arc ArcTo(Vec3 from, Vec3 to)
    {
        bool clockwise = _motion == 2;
        (char first, char second) = _plane switch { 18 => ('Z', 'X'), 19 => ('Y', 'Z'), _ => ('X', 'Y') };
        (char firstOffset, char secondOffset) = _plane switch { 18 => ('K', 'I'), 19 => ('J', 'K'), _ => ('I', 'J') };
        bool centre = _words.Has(firstOffset) || _words.Has(secondOffset);
        if (centre && _words.Has('R')) throw Refuse("the arc has both a radius and a centre", ReadRequest.ExportAgain);
        if (!centre && !_words.Has('R'))
        {
            throw Refuse(
                $"the arc has neither a radius (R) nor a centre in its plane ({firstOffset}, {secondOffset})",
                ReadRequest.ExportAgain);
        }
        if (!_words.Has(first) && !_words.Has(second))
            throw Refuse($"the arc has no end in its plane ({first} or {second})", "name the end of a full circle too");
        double tolerance = _unitMm == 1 ? RadiusToleranceMm : RadiusToleranceInch * _unitMm;
        Vec3 offset;
        if (centre)
        {
            offset = new Vec3(Offset(firstOffset), Offset(secondOffset), 0);
        }
        else
        {
            if (from.X == to.X && from.Y == to.Y)
                throw Refuse("an arc given by its radius ends where it starts", "give a full circle by its centre");
            double radius = _words['R'] * _unitMm;
            offset = Arc.CentreFor(from, to, radius, clockwise, tolerance)
                ?? throw Refuse($"the radius R{_words['R']} is too small to reach the end", ReadRequest.ExportAgain);
        }
        Arc arc = Arc.Around(from, to, offset, clockwise);
        if (!(arc.Radius > 0)) throw Refuse("the arc has its centre where it starts", ReadRequest.ExportAgain);
        if (centre && Math.Abs(arc.Radius - arc.EndRadius) > tolerance)
        {
            throw Refuse(
                $"the arc ends {Math.Abs(arc.Radius - arc.EndRadius):0.####} mm off its circle, more than the"
                + $" {tolerance:0.#####} mm of RS-274",
                "export it again with more decimals");
        }
        return arc;
    }

    private double Offset(char letter) => _words.Has(letter) ? _words[letter] * _unitMm : 0;

    private Vec3 InPlane(Vec3 p) => _plane switch
    {
        18 => new(p.Z, p.X, p.Y),
        19 => new(p.Y, p.Z, p.X),
        _ => p,
    };

    private Vec3 InSpace(Vec3 p) => _plane switch
    {
        18 => new(p.Y, p.Z, p.X),
        19 => new(p.Z, p.X, p.Y),
        _ => p,
    };

    private void CheckMoves(double more)
    {
        if (_tally.Count + more > MostMoves) throw Refuse($"it holds more than {MostMoves} moves", "split it");
    }
}
