namespace Platewright.Verify;

/// <summary>
/// Walks the cells of rotation space as the proof lists them and checks that each closed one excludes larger scales. The
/// cells themselves are worked out here, so together they cover all rotations up to the volume's symmetry.
/// </summary>
internal sealed class CellTree(ProofEntry proof)
{
    private readonly Interval _wanted = (Interval)1 / ((Interval)proof.UpperScale * ((Interval)1 + proof.Shrinkage));
    private readonly bool _flat = proof.SlabNormal is not null || proof.Volume.Shape == "cylinder";
    private readonly (bool Z, bool X) _assumed = AssumedSymmetry(proof);

    /// <summary>Cells looked at.</summary>
    public int Count { get; private set; }

    /// <exception cref="ProofException">Some cell does not exclude what the proof says it does.</exception>
    public void Check()
    {
        List<(int Chart, double X, double Y, double Z)> level = [.. proof.Charts.Select(c => (c, 0.0, 0.0, 0.0))];
        double half = 1;
        int at = 0, closing = 0;
        while (level.Count > 0)
        {
            var next = new List<(int, double, double, double)>();
            foreach ((int chart, double x, double y, double z) in level)
            {
                if (at >= proof.Cells.Length) throw new ProofException("the list of cells ends too early");
                char kind = proof.Cells[at++];
                Count++;
                switch (kind)
                {
                    case 'o' when IsOutside(x, y, z, half):
                        break;
                    case 's':
                        Split(next, chart, x, y, z, half / 2);
                        break;
                    case 'c' when closing < proof.Closings.Length:
                        CheckClosed(chart, x, y, z, half, proof.Closings[closing++]);
                        break;
                    default:
                        throw new ProofException($"cell {at} is marked '{kind}', which does not hold there");
                }
            }
            level = next;
            half /= 2;
        }
        if (at != proof.Cells.Length) throw new ProofException("the list of cells goes on after the last one");
    }

    private static (bool Z, bool X) AssumedSymmetry(ProofEntry proof)
    {
        (bool square, bool cube) = proof.Volume.BoxSymmetry;
        bool box = proof.Volume.Shape == "box";
        bool flat = proof.SlabNormal is not null || proof.Volume.Shape == "cylinder";
        bool cutHolds = proof.Cut switch
        {
            "none" => !flat,
            "disc" => flat,
            "square_bed" => !flat && box && square,
            "cube" => !flat && box && cube,
            _ => false,
        };
        if (!cutHolds) throw new ProofException($"the volume does not justify the cut \"{proof.Cut}\"");
        // A chart left out must be another one's image under half turns that map the volume to itself; a prism is replaced
        // by a larger one that has the half turns.
        string charts = string.Join(' ', proof.Charts);
        (bool Z, bool X)? assumed = charts switch
        {
            "0 1 2 3" => (false, false),
            "0 1" => (true, false),
            "0 3" => (false, true),
            "0" => (true, true),
            _ => null,
        };
        return assumed ?? throw new ProofException($"the charts {charts} do not cover all rotations");
    }

    private void Split(List<(int, double, double, double)> next, int chart, double x, double y, double z, double h)
    {
        if (h < 1e-14) throw new ProofException("a cell is split without end");
        for (int i = 0; i < (_flat ? 4 : 8); i++)
            next.Add((chart, x + ((i & 1) == 0 ? -h : h), y + ((i & 2) == 0 ? -h : h), _flat ? 0 : z + ((i & 4) == 0 ? -h : h)));
    }

    private bool IsOutside(double x, double y, double z, double half)
    {
        Interval a = Interval.Max(0, Interval.Abs(x) - half), b = Interval.Max(0, Interval.Abs(y) - half);
        Interval c = Interval.Max(0, Interval.Abs(z) - half);
        Interval quarter = Interval.Sqrt(2) - 1;
        return proof.Cut switch
        {
            "disc" => (a * a + b * b).Low > 1,
            "square_bed" => c.Low > quarter.High || (a + b).Low > Interval.Sqrt(2).High,
            "cube" => Math.Max(a.Low, Math.Max(b.Low, c.Low)) > quarter.High || (a + b + c).Low > 1,
            _ => false,
        };
    }

    private void CheckClosed(int chart, double x, double y, double z, double half, ContactEntry[] contacts)
    {
        // The farthest rotation of the cell is within α of its centre: sin(α/2) = half √d / |(1, centre)|.
        Interval norm = (Interval)1 + (Interval)x * x + (Interval)y * y + (Interval)z * z;
        Interval sinSquared = (Interval)half * half * (_flat ? 2 : 3) / norm;
        Interval cos = (Interval)1 - (Interval)2 * sinSquared;
        if (!(cos.Low > 0)) throw new ProofException("a cell is closed that spans more than a right angle");
        Interval sin = (Interval)2 * Interval.Sqrt(sinSquared * ((Interval)1 - sinSquared));

        Matrix m = WeightedMatrix(Rotation(chart, x, y, z), contacts);
        Interval trace = m.Trace;
        double least = m.LeastEigenvalue();
        if (!(trace.Low >= least)) throw new ProofException("a cell's bound is not of the assumed form");
        Interval bound = cos * trace - sin * m.AxialLength + ((Interval)1 - cos) * least;
        if (!(bound.Low >= _wanted.High))
            throw new ProofException($"a cell allows a scale up to {1 / bound.Low:R}, more than the proof claims");
    }

    private static Turn Rotation(int chart, double x, double y, double z) => chart switch
    {
        // Half turn about an axis times the quaternion (1, x, y, z).
        1 => Turn.Of(-x, 1, -z, y),
        2 => Turn.Of(-y, z, 1, -x),
        3 => Turn.Of(-z, -y, x, 1),
        _ => Turn.Of(1, x, y, z),
    };

    private Matrix WeightedMatrix(Turn turn, ContactEntry[] contacts)
    {
        if (contacts.Length == 0) throw new ProofException("a cell is closed without a contact");
        Interval total = 0;
        foreach (ContactEntry contact in contacts) total += contact.Weight;
        Matrix sum = Matrix.Zero;
        foreach (ContactEntry contact in contacts)
        {
            Interval allowed = 0;
            Matrix own = Matrix.Zero;
            for (int k = 0; k < contact.Vertices.Length; k++)
            {
                Point n = contact.Normals[k];
                allowed += Allowed(n);
                own = own.Plus(n, turn.Apply(proof.Vertices[contact.Vertices[k]]));
            }
            if (!(allowed.Low > 0)) throw new ProofException("a contact has no walls to push against");
            sum = sum.Plus(own, contact.Weight / (total * allowed));
        }
        return sum;
    }

    private Interval Allowed(Point n)
    {
        if (proof.SlabNormal is not { } slab) return proof.Volume.Support(n, _assumed.Z, _assumed.X);
        // A slab: only along z, and as thick as the volume is along the slab's normal.
        if (n.X.Low != 0 || n.X.High != 0 || n.Y.Low != 0 || n.Y.High != 0)
            throw new ProofException("a contact pushes against walls that a slab does not have");
        Interval thickness = (proof.Volume.Support(slab, false, false) + proof.Volume.Support(-slab, false, false))
            / Interval.Sqrt(slab.Dot(slab));
        return Interval.Abs(n.Z) * thickness / 2;
    }
}
