using Platewright.Fit.Planar;
using Platewright.Geometry;

namespace Platewright.Fit.Search;

/// <summary>An upright prism over a convex polygon: two planes, and the walls by a linear programme.</summary>
internal sealed class PrismContainer : Container
{
    private readonly Vec2[] _normals;
    private readonly double[] _offsets;
    private readonly double _height;
    private readonly (double WidthMm, Vec2 Normal) _leastBed;
    private readonly WallProgramme _programme = new();
    private readonly (int A, int B, int C) _start;
    private readonly Wall[] _walls;

    /// <param name="polygon">Convex, counter-clockwise, mm.</param>
    public PrismContainer(ReadOnlySpan<Vec2> polygon, double height)
    {
        _leastBed = PolygonWalls.LeastWidth(polygon);
        _height = height;
        (_normals, _offsets) = PolygonWalls.Of(polygon);
        _start = PolygonWalls.HoldingTriple(_normals, _offsets);
        _walls = new Wall[_normals.Length];
        Domain = RotationDomain.OfPrism(PolygonSymmetry.IsPointSymmetric(polygon), PolygonSymmetry.IsMirrorSymmetric(polygon));
    }

    public override RotationDomain Domain { get; }

    public override double LeastWidth => Math.Min(_height, _leastBed.WidthMm);

    public override Vec3 LeastWidthNormal => _height <= _leastBed.WidthMm ? Vec3.UnitZ : new Vec3(_leastBed.Normal.X, _leastBed.Normal.Y, 0);

    public override int Touch(SupportGrid part, in Matrix3 rotation, Span<Contact> contacts)
    {
        contacts[0] = Slab(part, rotation, Vec3.UnitZ, _height);
        for (int i = 0; i < _walls.Length; i++)
        {
            Vec3 u = rotation.Row0 * _normals[i].X + rotation.Row1 * _normals[i].Y;
            int vertex = part.Farthest(u);
            _walls[i] = new Wall(_normals[i], _offsets[i], part.Vertices[vertex].Dot(u), vertex);
        }
        _programme.Start(_walls[_start.A], _walls[_start.B], _walls[_start.C]);
        _programme.Solve(_walls);
        contacts[1] = ShadowContact(_programme);
        return 2;
    }
}
