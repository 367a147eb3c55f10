using Platewright.Geometry;

namespace Platewright.Fit.Search;

/// <summary>Two parallel planes: the relaxation that settles parts limited by the container's least width alone.</summary>
internal sealed class SlabContainer(double height) : Container
{
    public override RotationDomain Domain => RotationDomain.Tilts;

    public override double LeastWidth => height;

    public override Vec3 LeastWidthNormal => Vec3.UnitZ;

    public override int Touch(SupportGrid part, in Matrix3 rotation, Span<Contact> contacts)
    {
        contacts[0] = Slab(part, rotation, Vec3.UnitZ, height);
        return 1;
    }
}
