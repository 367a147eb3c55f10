using Platewright.Geometry;

namespace Platewright.Fit.Search;

/// <summary>Walks from a rotation to a local optimum: successive linear programmes with a trust region.</summary>
internal sealed class Polisher(SupportGrid part, Container container)
{
    private const int MostSteps = 60;
    private const int MostContactsPerStep = 24;
    private readonly ActiveSet _active = new();
    private readonly Contact[] _touch = new Contact[Container.MostContacts];

    /// <summary>The reciprocal of the largest scale at a rotation.</summary>
    public double ValueAt(in Matrix3 rotation, out Contact binding, out Matrix3 matrix)
    {
        int n = container.Touch(part, rotation, _touch);
        double most = double.NegativeInfinity;
        binding = default;
        matrix = default;
        Matrix3 transposed = rotation.Transposed();
        for (int i = 0; i < n; i++)
        {
            Matrix3 m = _touch[i].Moment(part.Vertices) * transposed;
            double value = ActiveSet.ValueOf(m);
            if (value <= most) continue;
            most = value;
            binding = _touch[i];
            matrix = m;
        }
        return most;
    }

    /// <summary>Improves <paramref name="rotation"/> in place; gives the value reached.</summary>
    public double Polish(ref Rotation rotation, double trust)
    {
        double value = ValueAt(rotation.ToMatrix(), out Contact binding, out Matrix3 matrix);
        for (int step = 0; step < MostSteps && trust > 1e-13; step++)
        {
            Vec3 w = Solve(rotation, binding, matrix, trust);
            double predicted = value - _active.Value;
            if (predicted <= Tolerances.Polish * value) break;
            Rotation next = Turned(rotation, w);
            double reached = ValueAt(next.ToMatrix(), out Contact nextBinding, out Matrix3 nextMatrix);
            if (reached < value)
            {
                if (value - reached < 0.3 * predicted) trust /= 3;
                else if (w.Length > 0.9 * trust) trust *= 1.5;
                rotation = next;
                value = reached;
                binding = nextBinding;
                matrix = nextMatrix;
            }
            else trust = Math.Min(trust, w.Length) / 4;
        }
        return value;
    }

    /// <summary><paramref name="rotation"/> followed by the rotation vector <paramref name="w"/>, radians.</summary>
    public static Rotation Turned(Rotation rotation, Vec3 w)
    {
        double angle = w.Length;
        return angle < 1e-300 ? rotation : (Rotation.About(w, angle) * rotation).Normalized();
    }

    private Vec3 Solve(Rotation rotation, in Contact binding, in Matrix3 matrix, double trust)
    {
        Matrix3 here = rotation.ToMatrix(), transposed = here.Transposed();
        container.Narrow(part, here, Math.Sqrt(3) * trust, null);
        _active.Start(binding, matrix, trust);
        for (int i = 0; i < MostContactsPerStep; i++)
        {
            int touching = container.Touch(part, Turned(rotation, _active.Step).ToMatrix(), _touch);
            Matrix3 entering = default;
            int which = -1;
            double most = 1e-15 * Math.Abs(_active.Value);
            for (int k = 0; k < touching; k++)
            {
                Matrix3 m = _touch[k].Moment(part.Vertices) * transposed;
                double excess = _active.Excess(m);
                if (excess <= most) continue;
                most = excess;
                which = k;
                entering = m;
            }
            if (which < 0 || !_active.Enter(_touch[which], entering)) break;
        }
        container.Widen();
        return _active.Step;
    }
}
