using Platewright.Geometry;

namespace Platewright.Fit.Search;

/// <summary>A box: three pairs of opposite walls.</summary>
internal sealed class BoxContainer(double x, double y, double z) : Container
{
    public override RotationDomain Domain { get; } = RotationDomain.OfBox(x, y, z);

    public override double LeastWidth => Math.Min(x, Math.Min(y, z));

    public override Vec3 LeastWidthNormal => x <= y && x <= z ? Vec3.UnitX : y <= z ? Vec3.UnitY : Vec3.UnitZ;

    public override int Touch(SupportGrid part, in Matrix3 rotation, Span<Contact> contacts)
    {
        contacts[0] = Slab(part, rotation, Vec3.UnitX, x);
        contacts[1] = Slab(part, rotation, Vec3.UnitY, y);
        contacts[2] = Slab(part, rotation, Vec3.UnitZ, z);
        return 3;
    }
}
