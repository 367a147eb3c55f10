using Platewright.Fit.Planar;
using Platewright.Geometry;

namespace Platewright.Fit.Search;

/// <summary>A convex volume to fit into, after margins: what holds a part of a given rotation back.</summary>
internal abstract class Container
{
    /// <summary>The most contacts any container's <see cref="Touch"/> gives.</summary>
    public const int MostContacts = 3;

    /// <summary>
    /// Writes the contacts that bind at rotation <paramref name="rotation"/>: the largest of their values is the
    /// reciprocal of the largest scale there. Gives how many: always the same number for one container.
    /// </summary>
    public abstract int Touch(SupportGrid part, in Matrix3 rotation, Span<Contact> contacts);

    /// <summary>
    /// Says that until the next call only rotations within <paramref name="angle"/> of this one matter: contacts may then
    /// leave out vertices that are unlikely to bind. A bound from fewer vertices still holds.
    /// </summary>
    /// <param name="among">The vertices kept for a wider angle around, or null for all.</param>
    /// <returns>The vertices kept, or null for all.</returns>
    public virtual int[]? Narrow(SupportGrid part, in Matrix3 rotation, double angle, int[]? among) => null;

    /// <summary>Takes all vertices back in.</summary>
    public virtual void Widen()
    {
    }

    /// <summary>The rotations to search, up to the container's own symmetry.</summary>
    public abstract RotationDomain Domain { get; }

    /// <summary>The least distance between two parallel planes that enclose the container, mm.</summary>
    public abstract double LeastWidth { get; }

    /// <summary>The normal of those planes.</summary>
    public abstract Vec3 LeastWidthNormal { get; }

    /// <summary>The contact between two opposite walls with unit normal <paramref name="axis"/>, this far apart.</summary>
    protected static Contact Slab(SupportGrid part, in Matrix3 rotation, Vec3 axis, double distance)
    {
        Vec3 u = new(
            axis.X * rotation.Row0.X + axis.Y * rotation.Row1.X + axis.Z * rotation.Row2.X,
            axis.X * rotation.Row0.Y + axis.Y * rotation.Row1.Y + axis.Z * rotation.Row2.Y,
            axis.X * rotation.Row0.Z + axis.Y * rotation.Row1.Z + axis.Z * rotation.Row2.Z);
        int high = part.Farthest(u);
        int low = part.Farthest(-u);
        Vec3 n = axis / distance;
        return new Contact(low, -n, high, n, low, default);
    }

    /// <summary>The contact of a shadow with the walls that hold it.</summary>
    protected static Contact ShadowContact(WallProgramme programme)
    {
        return new Contact(
            programme.WallAt(0).Vertex, Normal(programme, 0), programme.WallAt(1).Vertex, Normal(programme, 1),
            programme.WallAt(2).Vertex, Normal(programme, 2));

        static Vec3 Normal(WallProgramme programme, int k)
        {
            Vec2 n = programme.WallAt(k).Normal * programme.WeightAt(k);
            return new Vec3(n.X, n.Y, 0);
        }
    }
}
