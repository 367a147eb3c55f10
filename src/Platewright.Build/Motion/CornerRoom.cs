namespace Platewright.Build.Motion;

/// <summary>
/// Holds corners to the room there is for rounding them. The arc of the corner formula touches its segments at
/// R·tan(φ/2) from the vertex, φ the change of direction; where that is more than the path between this corner and its
/// neighbours offers, the formula promises too much: on ever finer chords of a curve its speed would grow without
/// bound. The turn is spread over half the way to either neighbour instead, so R ≤ (l + l')/4 / tan(φ/2) with the
/// lengths l, l' of straight path before and behind. On chords of a curve that is its radius of curvature, however fine
/// they are and also where they differ in length, and v² = a·R the centripetal limit. Between two corners so held
/// nothing straight is left: there the path is a curve all along, and its limit holds all along. Derived here.
/// </summary>
internal struct CornerRoom(double contourToleranceMm, double[] cruise2, double[] vertex2)
{
    private int _corner = -1;
    private double _quarterTurnSquared;
    private double _acceleration;
    private double _before;
    private double _straight;
    private int _held = -1;
    private double _heldTo;

    /// <summary>The path goes straight on over a vertex.</summary>
    public void GoOn(double length) => _straight += length;

    /// <summary>The path turns at a vertex; <paramref name="length"/> is that of the move behind it.</summary>
    public void Turn(int corner, double turnSquared, double acceleration, double length)
    {
        Limit();
        _corner = corner;
        _quarterTurnSquared = turnSquared * 0.25;
        _acceleration = acceleration;
        _before = _straight;
        _straight = length;
    }

    /// <summary>The path stops at a vertex, or ends.</summary>
    public void Stop(double length)
    {
        Limit();
        _corner = _held = -1;
        _straight = length;
    }

    /// <summary>
    /// With q = sin²(φ/2) and s = cos(φ/2), the arc of the formula touches at δ·(1 + s)/√q: only where that is too far
    /// away is a root taken.
    /// </summary>
    private void Limit()
    {
        if (_corner < 0) return;
        double room = (_before + _straight) * 0.25, s = Math.Sqrt(Math.Max(0, 1 - _quarterTurnSquared));
        double reach = contourToleranceMm * (1 + s);
        if (reach * reach <= room * room * _quarterTurnSquared)
        {
            _held = -1;
            return;
        }
        double limit = _acceleration * room * s / Math.Sqrt(_quarterTurnSquared);
        vertex2[_corner] = Math.Min(vertex2[_corner], limit);
        if (_held >= 0)
        {
            double most = Math.Max(_heldTo, limit);
            for (int move = _held; move < _corner; move++)
            {
                cruise2[move] = Math.Min(cruise2[move], most);
                vertex2[move] = Math.Min(vertex2[move], most);
            }
        }
        (_held, _heldTo) = (_corner, limit);
    }
}
