using System.Collections.Immutable;
using Platewright.Fit;
using Platewright.Formats;
using Platewright.Formats.Toml;
using Platewright.Machines;

namespace Platewright.Study;

/// <summary>
/// What holds for parts unless a narrower table says otherwise: the study, then the project, then the part, then the
/// alternative.
/// </summary>
internal sealed record PartDefaults
{
    /// <summary>Below a twentieth nobody calls it the same part.</summary>
    private static readonly NumberRange Scale = new(0.05, 1);

    private static readonly NumberRange Brim = new(0, 100, "mm");

    /// <summary>Where paths start.</summary>
    public string Folder { get; init; } = ".";

    public Material? Material { get; init; }

    public string? Colour { get; init; }

    public LengthUnit? Unit { get; init; }

    public double? BrimMm { get; init; }

    public Recipe Recipe { get; init; } = RecipeCatalog.Usual;

    public bool Turn { get; init; } = true;

    public bool Tilt { get; init; } = true;

    public bool ScaleDown { get; init; } = true;

    public bool Cut { get; init; } = true;

    public double LeastScale { get; init; } = new StudyOptions().LeastScale;

    public Allowance Allowance => new(Turn, Tilt, Cut, ScaleDown ? LeastScale : 1);

    /// <summary>These, with what a project, a part or an alternative says in their place.</summary>
    public PartDefaults With(TomlTable table, ImmutableArray<Material> ownMaterials) =>
        WithMaking(table, ownMaterials).WithAllowance(table);

    /// <summary>These, with the material, colour, unit and brim of a table.</summary>
    public PartDefaults WithMaking(TomlTable table, ImmutableArray<Material> ownMaterials) => this with
    {
        Material = MaterialOf(table, ownMaterials) ?? Material,
        Colour = table.Text("colour") ?? Colour,
        Unit = UnitOf(table) ?? Unit,
        BrimMm = table.Number("brim_mm", Brim) ?? BrimMm,
        Recipe = RecipeOf(table) ?? Recipe,
    };

    /// <summary>These, with what a table allows: <c>least_scale</c> and <c>[allow]</c>.</summary>
    public PartDefaults WithAllowance(TomlTable table)
    {
        double? leastScale = table.Number("least_scale", Scale);
        PartDefaults read = leastScale is { } least ? this with { LeastScale = least, ScaleDown = true } : this;
        return table.Table("allow") is { } allow ? read.Allowing(allow, leastScale) : read;
    }

    private PartDefaults Allowing(TomlTable allow, double? leastScale)
    {
        bool? scale = allow.Flag("scale");
        if (scale is false && leastScale < 1)
            allow.Refuse("scale", $"least_scale beside it allows {leastScale}, but scaling is forbidden; keep one.");
        return this with
        {
            Turn = allow.Flag("turn") ?? Turn,
            Tilt = allow.Flag("tilt") ?? Tilt,
            ScaleDown = scale ?? ScaleDown,
            Cut = allow.Flag("cut") ?? Cut,
        };
    }

    private static Material? MaterialOf(TomlTable table, ImmutableArray<Material> own)
    {
        if (table.Text("material") is not { } name) return null;
        Material? material = MaterialCatalog.Find(name, own);
        if (material is null) table.Refuse("material", MaterialCatalog.UnknownSentence(name, own));
        return material;
    }

    /// <summary>A bundled recipe by its id, or a recipe file beside the study.</summary>
    private Recipe? RecipeOf(TomlTable table)
    {
        if (table.Text("recipe") is not { } name) return null;
        if (RecipeCatalog.FindBundled(name) is { } bundled) return bundled;
        if (!name.EndsWith(".toml", StringComparison.OrdinalIgnoreCase))
        {
            table.Refuse("recipe", RecipeCatalog.UnknownSentence(name));
            return null;
        }
        try
        {
            return RecipeFile.Read(StudyPaths.Full(Folder, name));
        }
        catch (DescriptionException e)
        {
            table.Refuse("recipe", e.Message);
            return null;
        }
    }

    private static LengthUnit? UnitOf(TomlTable table)
    {
        if (table.Text("unit") is not { } name) return null;
        LengthUnit? unit = LengthUnits.Named(name);
        if (unit is null) table.Refuse("unit", $"expected um, mm, cm, m, in or ft, found \"{name}\".");
        return unit;
    }
}
