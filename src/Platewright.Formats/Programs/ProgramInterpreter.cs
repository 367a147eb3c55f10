using Platewright.Formats.Reading;
using Platewright.Geometry;

namespace Platewright.Formats.Programs;

/// <summary>
/// Runs a program line by line. Within a line words act in the order of RS-274, whatever order they stand in: speeds,
/// settings, waits, coordinates, then the motion.
/// </summary>
internal sealed partial class ProgramInterpreter(ReadRequest request, ProgramDialect dialect)
{
    private const double MmPerInch = 25.4;
    private const double SecondsPerMinute = 60;

    private readonly ProgramTally _tally = new();
    private readonly UnknownWords _unknown = new();
    private readonly LineWords _words = new();
    private readonly ProgramHeat _heat = new();
    private int _line;
    private int _motion = 1;
    private int _plane = 17;
    private double _unitMm = 1;
    private bool _relative;
    private bool _relativeE;
    private Vec3 _at;
    private Vec3 _shift;
    private double _e;
    private double _speedMmS = double.PositiveInfinity;
    private double _speedFactor = 1;
    private double _flowFactor = 1;
    private int? _tool;
    private int _toolChanges;
    private int _filamentChanges;
    private int _homings;

    /// <summary>True after a word that ends the program.</summary>
    public bool Ended { get; private set; }

    public void Run(ReadOnlySpan<byte> line, int number)
    {
        _line = number;
        if (line.EndsWith("\r"u8)) line = line[..^1];
        if (line.IndexOfAny((byte)0, (byte)'\r') is int odd and >= 0)
        {
            throw line[odd] == 0
                ? Refuse("it is not text", "export it as text")
                : Refuse("a line ends with a bare carriage return", "save it with ordinary line ends");
        }
        new LineParser(line, _words, _unknown, request, number).Parse();
        if (!_words.IsEmpty) Execute();
    }

    public MotionProgram Finish() =>
        _tally.ToProgram(request.File, _unknown.InOrder(), DialectChoices.Of(dialect)) with
        {
            Nozzle = _heat.Nozzle,
            Bed = _heat.Bed,
            Chamber = _heat.Chamber,
            ToolChanges = _toolChanges,
            FilamentChanges = _filamentChanges,
            Homings = _homings,
        };

    private void Execute()
    {
        int motion = -1, target = -1;
        bool wait = false;
        foreach (int code in _words.GCodes)
        {
            switch (code)
            {
                case 0 or 10 or 20 or 30:
                    if (motion >= 0) throw Refuse("it holds two words of motion", ReadRequest.ExportAgain);
                    motion = code / 10;
                    break;
                case 40:
                    wait = true;
                    break;
                case 170 or 180 or 190:
                    _plane = code / 10;
                    break;
                case 200 or 210:
                    _unitMm = code == 200 ? MmPerInch : 1;
                    break;
                case 900 or 910:
                    _relative = code == 910;
                    break;
                case 280 or 920 or 921:
                    if (target >= 0) throw Refuse("two of its words use the same axis words", ReadRequest.ExportAgain);
                    target = code;
                    break;
            }
        }
        if (target != 280 && _words.FirstBare is char bare)
            throw Refuse($"{bare} has no number", ReadRequest.ExportAgain);
        bool aboutHeat = false;
        foreach (int code in _words.MCodes) aboutHeat |= RunM(code);
        if (_words.Has('F') && !aboutHeat) SetSpeed(_words['F']);
        if (_words.Has('T') && !aboutHeat) SelectTool(_words['T']);
        if (wait) Wait();
        switch (target)
        {
            case 280:
                Home();
                break;
            case 920:
                ShiftTo();
                break;
            case 921:
                _shift = default;
                break;
        }
        if (motion >= 0) _motion = motion;
        bool axes = _words.Has('X') || _words.Has('Y') || _words.Has('Z') || _words.Has('E');
        bool arc = _motion >= 2 && (_words.Has('I') || _words.Has('J') || _words.Has('K') || _words.Has('R'));
        if (target >= 0 && motion >= 0 && axes)
            throw Refuse("two of its words use the same axis words", ReadRequest.ExportAgain);
        if (target < 0 && _words.MCodes.IsEmpty && !wait && (axes || arc || motion >= 2)) Move();
        else if (motion >= 0 && axes && target < 0) Move();
        CountUnread();
    }

    /// <summary>Acts on an M word. Returns true where F, S, T and P of the line belong to it.</summary>
    private bool RunM(int code)
    {
        switch (code)
        {
            case 20 or 300:
                Ended = true;
                return false;
            case 820 or 830:
                _relativeE = code == 830;
                return false;
            case 1040 or 1090 or 1400 or 1900 or 1410 or 1910:
                double? wanted = _words.Has('S') ? _words['S'] : _words.Has('R') ? _words['R'] : null;
                if (wanted is > 0) _heat.Want(code, wanted.Value);
                return true;
            case 2200:
                if (_words.Has('S')) _speedFactor = Factor("M220");
                return true;
            case 2210:
                if (_words.Has('S')) _flowFactor = Factor("M221");
                return true;
            case 6000:
                _filamentChanges++;
                return true;
            case 60:
                return false;
            default:
                return true;
        }
    }

    private double Factor(string word)
    {
        double percent = _words['S'];
        return percent > 0 ? percent / 100 : throw Refuse($"{word} S{percent} is not above 0", "ask for more than 0 %");
    }

    private void SetSpeed(double perMinute)
    {
        if (!(perMinute > 0)) throw Refuse($"the speed F{perMinute} is not above 0", "ask for a speed");
        _speedMmS = perMinute * _unitMm / SecondsPerMinute;
    }

    private void SelectTool(double tool)
    {
        if (tool != Math.Floor(tool)) throw Refuse($"T{tool} is no tool", "call tools by whole numbers");
        if (_tool is int at && at != (int)tool) _toolChanges++;
        _tool = (int)tool;
    }

    private void Wait()
    {
        double seconds = _words.Has('P') ? _words['P'] / (dialect == ProgramDialect.Extrusion ? 1000 : 1) : 0;
        if (_words.Has('S') && dialect == ProgramDialect.Extrusion) seconds = _words['S'];
        if (seconds < 0) throw Refuse("it waits a negative time", "ask for a time above 0");
        if (seconds > 0) _tally.AddMove(_at, new(_at, Speed, 0, seconds, float.PositiveInfinity, _line), 0);
    }

    private void Home()
    {
        _homings++;
        bool all = !_words.Names('X') && !_words.Names('Y') && !_words.Names('Z');
        _at = new(Homed('X', _at.X), Homed('Y', _at.Y), Homed('Z', _at.Z));
        _shift = new(Homed('X', _shift.X), Homed('Y', _shift.Y), Homed('Z', _shift.Z));

        double Homed(char axis, double now) => all || _words.Names(axis) ? 0 : now;
    }

    /// <summary>G92: gives where it stands other coordinates.</summary>
    private void ShiftTo()
    {
        bool all = !_words.Has('X') && !_words.Has('Y') && !_words.Has('Z') && !_words.Has('E');
        _shift = new(Shifted('X', _at.X, _shift.X), Shifted('Y', _at.Y, _shift.Y), Shifted('Z', _at.Z, _shift.Z));
        if (all) _e = 0;
        else if (_words.Has('E')) _e = _words['E'] * _unitMm;

        double Shifted(char axis, double at, double now) =>
            all ? at : _words.Has(axis) ? at - _words[axis] * _unitMm : now;
    }

    private double Speed => _speedMmS * _speedFactor;

    private void CountUnread()
    {
        uint unread = _words.StatedOutside(ReadLetters);
        for (char letter = 'A'; unread != 0 && letter <= 'Z'; letter++)
        {
            if ((unread & LineWords.Bit(letter)) != 0) _unknown.Count(letter.ToString(), _line);
        }
    }

    private ModelFileException Refuse(string problem, string remedy) =>
        request.Refuse($"line {_line}", problem, remedy);
}
