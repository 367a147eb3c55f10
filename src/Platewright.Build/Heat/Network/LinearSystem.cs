namespace Platewright.Build.Heat.Network;

/// <summary>Solves A·x = b for a small dense A by elimination with row exchange; the factors serve several b.</summary>
internal sealed class LinearSystem(int size)
{
    private readonly int[] _order = new int[size];
    private readonly double[] _scratch = new double[size];

    /// <summary>A, to be filled before <see cref="Factorise"/>, which overwrites it.</summary>
    public double[,] Matrix { get; } = new double[size, size];

    public void Factorise()
    {
        double[,] a = Matrix;
        for (int i = 0; i < size; i++) _order[i] = i;
        for (int k = 0; k < size; k++)
        {
            int pivot = k;
            for (int i = k + 1; i < size; i++) if (Math.Abs(a[i, k]) > Math.Abs(a[pivot, k])) pivot = i;
            if (a[pivot, k] == 0) throw new InvalidOperationException("Bug in Platewright: a singular heat balance.");
            if (pivot != k)
            {
                for (int j = 0; j < size; j++) (a[k, j], a[pivot, j]) = (a[pivot, j], a[k, j]);
                (_order[k], _order[pivot]) = (_order[pivot], _order[k]);
            }
            for (int i = k + 1; i < size; i++)
            {
                double factor = a[i, k] /= a[k, k];
                if (factor == 0) continue;
                for (int j = k + 1; j < size; j++) a[i, j] -= factor * a[k, j];
            }
        }
    }

    /// <summary>Replaces b by x.</summary>
    public void Solve(Span<double> b)
    {
        for (int i = 0; i < size; i++)
        {
            double sum = b[_order[i]];
            for (int j = 0; j < i; j++) sum -= Matrix[i, j] * _scratch[j];
            _scratch[i] = sum;
        }
        for (int i = size - 1; i >= 0; i--)
        {
            double sum = _scratch[i];
            for (int j = i + 1; j < size; j++) sum -= Matrix[i, j] * b[j];
            b[i] = sum / Matrix[i, i];
        }
    }
}
