using System.Text;
using Platewright.Fit.Search;
using Platewright.Geometry;
using Platewright.Machines;

namespace Platewright.Fit.Proofs;

/// <summary>Repeats the search over all rotations and writes down every cell.</summary>
public static class FitProver
{
    // The witness stands this much inside and the bound this much outside of what was computed, relative: room for the
    // checker's outward rounding.
    private const double Room = 1e-10;

    /// <exception cref="ArgumentException">The margins leave no room, or the search did not close within its budget.</exception>
    /// <exception cref="OperationCanceledException">Cancelled.</exception>
    public static FitProof Prove(PreparedPart part, Machine machine, FitOptions options, CancellationToken stop)
    {
        FitResult fit = FitSolver.Solve(part, machine, new Allowance(Cut: false), options, stop);
        UsableVolume volume = UsableVolume.Of(machine);
        var cells = new CellRecorder();
        SearchResult found = FreeSearch.Run(
            part, volume.Container, [fit.Tilted.Pose.Rotation], options.Tolerance, options.MostCells, cells, stop);
        ProvedBound bound = found.Cells > 0
            ? cells.ToBound(null, volume.Container.Domain)
            : ProveWidth(part, volume.Container, stop);
        if (bound.Cells.Contains('?', StringComparison.Ordinal))
            throw new ArgumentException("The search did not close within its budget of cells; raise it or the tolerance.", nameof(options));
        double lower = fit.Tilted.LargestScale * (1 - Room);
        return new FitProof
        {
            VerticesMm = part.Grid.Vertices.ToArray(),
            Shrinkage = part.Shape.Shrinkage,
            Volume = volume.ToProved(),
            LowerScale = lower,
            Witness = Lifted(new Placing(part, volume, part.Shape.BrimMm).PoseAt(fit.Tilted, lower), Room * volume.HeightMm / 4),
            UpperScale = Math.Max(found.UpperBound / part.Growth, fit.Tilted.LargestScale) * (1 + Room),
            Bound = bound,
        };
    }

    // Off the build surface by a hair, so that rounding cannot put it below.
    private static Pose Lifted(Pose pose, double mm) => pose with { Translation = pose.Translation + new Vec3(0, 0, mm) };

    private static ProvedBound ProveWidth(PreparedPart part, Container container, CancellationToken stop)
    {
        var cells = new CellRecorder();
        part.FindLeastWidth(cells, stop);
        return cells.ToBound(container.LeastWidthNormal, RotationDomain.Tilts);
    }

    private sealed class CellRecorder : ICellListener
    {
        private readonly StringBuilder _cells = new();
        private readonly List<IReadOnlyList<ProvedContact>> _closings = [];

        public void Outside() => _cells.Append('o');

        public void Split() => _cells.Append('s');

        public void Open() => _cells.Append('?');

        public void Closed(IReadOnlyList<(double Weight, Contact Contact)> weights)
        {
            _cells.Append('c');
            _closings.Add([.. weights.Select(w => new ProvedContact(w.Weight, Terms(w.Contact)))]);
        }

        public ProvedBound ToBound(Vec3? slabNormal, RotationDomain domain) =>
            new(slabNormal, domain.Charts, NameOf(domain.Cut), _cells.ToString(), _closings);

        private static string NameOf(DomainCut cut) => cut switch
        {
            DomainCut.Disc => "disc",
            DomainCut.SquareBed => "square_bed",
            DomainCut.Cube => "cube",
            _ => "none",
        };

        private static (int, Vec3)[] Terms(Contact c)
        {
            var terms = new List<(int, Vec3)> { (c.Vertex0, c.Normal0), (c.Vertex1, c.Normal1), (c.Vertex2, c.Normal2) };
            terms.RemoveAll(t => t.Item2 == default);
            return [.. terms];
        }
    }
}
