using Platewright.Geometry;

namespace Platewright.Fit.Search;

/// <summary>
/// The small linear programme behind every bound and every polishing step: min over |w_j| ≤ α of the largest of
/// f_k + g_k · w, where f_k and g_k are value and gradient of contact k at the rotation R, and w a small rotation after
/// it. Solved in its dual (weights m ≥ 0 that sum to 1: max Σ m f − α |Σ m g|₁) by the simplex method on a basis of
/// four, with contacts generated as they are asked for. Its weights are what the certificate is made of.
/// </summary>
internal sealed class ActiveSet
{
    /// <summary>Rows of the programme: three components of the gradient, and the sum of the weights.</summary>
    public const int Size = 4;

    // Basis columns: a contact, or a slack ±e_j that costs α.
    private readonly Contact[] _contacts = new Contact[Size];
    private readonly Matrix3[] _matrices = new Matrix3[Size];
    private readonly bool[] _isContact = new bool[Size];
    private readonly double[] _cost = new double[Size];
    private readonly double[] _inverse = new double[Size * Size];
    private readonly double[] _weight = new double[Size];
    private readonly double[] _direction = new double[Size];
    private double _alpha;

    /// <summary>The minimiser w of the contacts so far, radians.</summary>
    public Vec3 Step { get; private set; }

    /// <summary>The value there: no rotation in the box does better against the contacts so far.</summary>
    public double Value { get; private set; }

    public static double ValueOf(in Matrix3 m) => m.Row0.X + m.Row1.Y + m.Row2.Z;

    /// <summary>Gradient of the trace of exp(w) M at w = 0, with M = Σ n (R v)ᵀ transposed: Σ (R v) × n.</summary>
    public static Vec3 GradientOf(in Matrix3 m) =>
        new(m.Row2.Y - m.Row1.Z, m.Row0.Z - m.Row2.X, m.Row1.X - m.Row0.Y);

    /// <summary>Begins with one contact: all weight on it, its gradient taken up by slacks.</summary>
    public void Start(in Contact contact, in Matrix3 matrix, double alpha)
    {
        _alpha = alpha;
        Vec3 g = GradientOf(matrix);
        Array.Clear(_inverse);
        for (int j = 0; j < 3; j++)
        {
            double gj = Component(g, j);
            double sign = gj > 0 ? -1 : 1;
            _isContact[j] = false;
            _cost[j] = -alpha;
            _weight[j] = Math.Abs(gj);
            // Rows of the inverse of [±e_j …, (g, 1)].
            _inverse[j * Size + j] = sign;
            _inverse[j * Size + 3] = -sign * gj;
        }
        _inverse[3 * Size + 3] = 1;
        _isContact[3] = true;
        _contacts[3] = contact;
        _matrices[3] = matrix;
        _cost[3] = ValueOf(matrix);
        _weight[3] = 1;
        Price();
    }

    /// <summary>How much the contact exceeds the present value at the present step.</summary>
    public double Excess(in Matrix3 matrix) => ValueOf(matrix) + GradientOf(matrix).Dot(Step) - Value;

    /// <summary>Brings a contact into the basis. False where numbers no longer allow it.</summary>
    public bool Enter(in Contact contact, in Matrix3 matrix)
    {
        Vec3 g = GradientOf(matrix);
        if (!Pivot(g.X, g.Y, g.Z, 1, ValueOf(matrix), out int row)) return false;
        _isContact[row] = true;
        _contacts[row] = contact;
        _matrices[row] = matrix;
        return RestoreBox();
    }

    /// <summary>The weighted sum of the contacts' matrices; weights sum to 1.</summary>
    public Matrix3 Mixture()
    {
        Matrix3 sum = default;
        double total = 0;
        for (int i = 0; i < Size; i++)
        {
            if (!_isContact[i] || _weight[i] <= 0) continue;
            Matrix3 m = _matrices[i] * _weight[i];
            sum = new Matrix3(sum.Row0 + m.Row0, sum.Row1 + m.Row1, sum.Row2 + m.Row2);
            total += _weight[i];
        }
        return total > 0 ? sum * (1 / total) : sum;
    }

    /// <summary>The contacts in the basis, for the cells below to try first.</summary>
    public Contact[] Contacts()
    {
        int n = _isContact.Count(taken => taken);
        var contacts = new Contact[n];
        for (int i = Size - 1; i >= 0; i--)
            if (_isContact[i]) contacts[--n] = _contacts[i];
        return contacts;
    }

    /// <summary>The contacts with a positive weight, weights summing to 1.</summary>
    public List<(double Weight, Contact Contact)> Weights()
    {
        double total = 0;
        for (int i = 0; i < Size; i++)
            if (_isContact[i] && _weight[i] > 0) total += _weight[i];
        var list = new List<(double, Contact)>();
        for (int i = 0; i < Size; i++)
            if (_isContact[i] && _weight[i] > 0) list.Add((_weight[i] / total, _contacts[i]));
        return list;
    }

    private static double Component(Vec3 v, int j) => j == 0 ? v.X : j == 1 ? v.Y : v.Z;

    // Slacks whose price is wrong (the step leaves the box) come back first.
    private bool RestoreBox()
    {
        for (int guard = 0; guard < 8; guard++)
        {
            Price();
            int worst = -1;
            double most = _alpha * (1 + 1e-12);
            for (int j = 0; j < 3; j++)
            {
                double w = Math.Abs(Component(Step, j));
                if (w <= most) continue;
                most = w;
                worst = j;
            }
            if (worst < 0) return true;
            double sign = Component(Step, worst) > 0 ? 1 : -1;
            if (!Pivot(worst == 0 ? sign : 0, worst == 1 ? sign : 0, worst == 2 ? sign : 0, 0, -_alpha, out int row)) return false;
            _isContact[row] = false;
        }
        Price();
        return true;
    }

    private bool Pivot(double a0, double a1, double a2, double a3, double cost, out int row)
    {
        row = -1;
        double least = double.PositiveInfinity;
        for (int i = 0; i < Size; i++)
        {
            int at = i * Size;
            double d = _inverse[at] * a0 + _inverse[at + 1] * a1 + _inverse[at + 2] * a2 + _inverse[at + 3] * a3;
            _direction[i] = d;
            if (d <= 1e-13) continue;
            double ratio = Math.Max(0, _weight[i]) / d;
            if (ratio >= least) continue;
            least = ratio;
            row = i;
        }
        if (row < 0) return false;
        double pivot = _direction[row];
        for (int k = 0; k < Size; k++) _inverse[row * Size + k] /= pivot;
        for (int i = 0; i < Size; i++)
        {
            if (i == row) continue;
            double d = _direction[i];
            for (int k = 0; k < Size; k++) _inverse[i * Size + k] -= d * _inverse[row * Size + k];
            _weight[i] -= d * least;
        }
        _weight[row] = least;
        _cost[row] = cost;
        return true;
    }

    private void Price()
    {
        double y0 = 0, y1 = 0, y2 = 0, y3 = 0;
        for (int i = 0; i < Size; i++)
        {
            double c = _cost[i];
            y0 += c * _inverse[i * Size];
            y1 += c * _inverse[i * Size + 1];
            y2 += c * _inverse[i * Size + 2];
            y3 += c * _inverse[i * Size + 3];
        }
        Step = new Vec3(-y0, -y1, -y2);
        Value = y3;
    }
}
