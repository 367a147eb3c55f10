namespace Platewright.Geometry;

/// <summary>A signature unfolded for comparing: moments as tensors, main axes, hull points.</summary>
internal sealed class Pattern
{
    private const int Directions = 48;

    private static readonly Vec3[] Sphere = [.. Frame.Spiral(Directions)];

    private readonly double[] _third;
    private readonly double[] _fourth;
    private readonly double _size;
    private double[]? _nearest;

    public Pattern(ShapeSignature signature)
        : this(signature.Moments, [.. signature.HullPoints])
    {
    }

    private Pattern(IReadOnlyList<double> moments, Vec3[] points)
    {
        Moments = moments;
        Points = points;
        (Values, Axes) = SymmetricMatrix.Axes(SymmetricMatrix.From(moments));
        _third = Unfolded(moments, 3, 6);
        _fourth = Unfolded(moments, 4, 16);
        _size = Math.Sqrt(Values.X + Values.Y + Values.Z);
    }

    public IReadOnlyList<double> Moments { get; }

    public Vec3[] Points { get; }

    /// <summary>How far the furthest point lies from the centre.</summary>
    public double Reach => Points.Max(p => p.Length);

    public Vec3 Values { get; }

    public Matrix3 Axes { get; }

    /// <summary>The points that lie as far out as point <paramref name="index"/> of a pattern and, where asked, as far
    /// from their nearest neighbour.</summary>
    public IEnumerable<int> Resembling(Pattern other, int index, double reach, bool byNeighbours)
    {
        double length = other.Points[index].Length, gap = byNeighbours ? other.Nearest[index] : 0;
        for (int i = 0; i < Points.Length; i++)
        {
            if (Math.Abs(Points[i].Length - length) > reach) continue;
            if (!byNeighbours || Math.Abs(Nearest[i] - gap) <= reach) yield return i;
        }
    }

    /// <summary>Distance of each point from its nearest neighbour.</summary>
    private double[] Nearest => _nearest ??= [.. Points.Select(
        (p, i) => Points.Where((_, j) => j != i).Select(q => (q - p).Length).DefaultIfEmpty(0).Min())];

    /// <summary>The image in the plane x = 0.</summary>
    public Pattern Mirrored()
    {
        double[] moments = [.. Moments];
        int place = 0;
        for (int degree = 2; degree <= 4; degree++)
            for (int i = degree; i >= 0; i--)
                for (int j = degree - i; j >= 0; j--, place++)
                    if (i % 2 != 0) moments[place] = -moments[place];
        return new Pattern(moments, [.. Points.Select(p => new Vec3(-p.X, p.Y, p.Z))]);
    }

    /// <summary>The largest difference between this pattern after a turn and another, as a share of its size; infinite
    /// as soon as it is above <paramref name="enough"/>.</summary>
    public double Differs(Pattern other, Matrix3 turn, double enough)
    {
        double third = Distance(Turned(_third, 3, turn), other._third) / Math.Pow(_size, 3);
        double fourth = Distance(Turned(_fourth, 4, turn), other._fourth) / Math.Pow(_size, 4);
        double worst = Math.Max(third, fourth);
        if (worst > enough) return double.PositiveInfinity;
        Matrix3 back = turn.Transposed();
        foreach (Vec3 u in Sphere)
        {
            double extent = Furthest(other.Points, u), own = Furthest(Points, back.Apply(u));
            worst = Math.Max(worst, Math.Abs(extent - own) / _size);
            if (worst > enough) return double.PositiveInfinity;
        }
        return worst;
    }

    private static double Furthest(Vec3[] points, Vec3 u)
    {
        double most = double.NegativeInfinity;
        foreach (Vec3 p in points) most = Math.Max(most, u.Dot(p));
        return most;
    }

    private static double Distance(double[] a, double[] b)
    {
        double sum = 0;
        for (int i = 0; i < a.Length; i++) sum += (a[i] - b[i]) * (a[i] - b[i]);
        return Math.Sqrt(sum);
    }

    /// <summary>The full tensor from its monomials: entry (i, j, …) is the moment of x_i x_j ….</summary>
    private static double[] Unfolded(IReadOnlyList<double> moments, int degree, int begin)
    {
        double[] tensor = new double[(int)Math.Pow(3, degree)];
        for (int entry = 0; entry < tensor.Length; entry++)
        {
            int xs = 0, ys = 0;
            for (int k = 0, rest = entry; k < degree; k++, rest /= 3)
            {
                if (rest % 3 == 0) xs++;
                else if (rest % 3 == 1) ys++;
            }
            // Monomials with i x's come after those with more: 1 + 2 + … of them; then y's fall.
            int others = degree - xs;
            tensor[entry] = moments[begin + others * (others + 1) / 2 + (others - ys)];
        }
        return tensor;
    }

    /// <summary>Turns a tensor: every index in turn is multiplied by the matrix and moved to the end.</summary>
    private static double[] Turned(double[] tensor, int degree, Matrix3 turn)
    {
        Vec3[] rows = [turn.Row0, turn.Row1, turn.Row2];
        int rest = tensor.Length / 3;
        for (int k = 0; k < degree; k++)
        {
            double[] next = new double[tensor.Length];
            for (int r = 0; r < rest; r++)
            {
                Vec3 column = new(tensor[r], tensor[rest + r], tensor[2 * rest + r]);
                for (int i = 0; i < 3; i++) next[3 * r + i] = rows[i].Dot(column);
            }
            tensor = next;
        }
        return tensor;
    }
}
