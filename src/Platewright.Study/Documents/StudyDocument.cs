using System.ComponentModel.DataAnnotations;
using System.Text.Json.Serialization;

namespace Platewright.Study.Documents;

/// <summary>What study.json says, and what the page in report.html reads. Keys are the snake_case of these names.</summary>
public sealed record StudyDocument
{
    public int Format { get; init; } = 1;

    public required string Name { get; init; }

    /// <summary>One sentence with the answer, the sample size and its doubt.</summary>
    public required string Headline { get; init; }

    public required StudyOptionsDocument Options { get; init; }

    public required IReadOnlyList<MachineDocument> Machines { get; init; }

    public required IReadOnlyList<ProjectDocument> Projects { get; init; }

    public required IReadOnlyList<PartDocument> Parts { get; init; }

    /// <summary>Share of projects against the edge of a cube-shaped machine: one for fit, one for each kind of heat.</summary>
    public required IReadOnlyList<CurveDocument> Curves { get; init; }

    public required IReadOnlyList<AlikeDocument> Alike { get; init; }

    public required IReadOnlyList<UnusableDocument> Unusable { get; init; }

    /// <summary>Which machine or mix the work needs; null where no project could be judged.</summary>
    public SizingDocument? Sizing { get; init; }

    /// <summary>Plain sentences that no interval covers: what the sample cannot say, and cautions.</summary>
    public required IReadOnlyList<string> Notes { get; init; }

    /// <summary>How long it took, s; for information only.</summary>
    public double Seconds { get; init; }
}

public sealed record StudyOptionsDocument(double TightMm, double LeastScale, double BeadWidthMm, double Confidence, double Tolerance);

/// <param name="Id">Unique in the document; what fits refer to.</param>
/// <param name="Builds">All parts it takes whole, built once in their quantity; null where nothing was estimated.</param>
/// <param name="Cycles">One for each material of the study it reaches.</param>
/// <param name="EdgeMm">Where the machine stands on the size line: edge of the cube with its usable volume, mm.</param>
public sealed record MachineDocument(
    string Id, string Name, bool Generic, BuildVolumeDocument BuildVolume, MarginsDocument MarginsMm,
    IReadOnlyList<BoxDocument> KeepOutsMm, HeatDocument? HeatsTo, bool? Enclosed, PriceDocument? Price,
    IReadOnlyList<double>? FootprintMm, string? Note, double EdgeMm, CoverageDocument Coverage,
    BuildsDocument? Builds, IReadOnlyList<CycleDocument> Cycles);

/// <param name="Shape">box, cylinder or prism; only its own fields are present.</param>
public sealed record BuildVolumeDocument(
    [property: AllowedValues("box", "cylinder", "prism")] string Shape,
    [property: JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)] IReadOnlyList<double>? SizeMm,
    [property: JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)] double? DiameterMm,
    [property: JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    IReadOnlyList<IReadOnlyList<double>>? PolygonMm,
    double HeightMm);

public sealed record MarginsDocument(double Left, double Right, double Front, double Back, double Top);

public sealed record BoxDocument(IReadOnlyList<double> Min, IReadOnlyList<double> Max);

public sealed record HeatDocument(double NozzleC, double BedC, double ChamberC);

public sealed record PriceDocument(decimal Amount, string Currency);

/// <summary>How much of the work a machine takes: counts of projects and their shares.</summary>
/// <param name="Fits">Without a compromise.</param>
/// <param name="Compromise">Only tilted, scaled or in pieces.</param>
/// <param name="No">Not at all.</param>
/// <param name="CanMake">Fits, with or without a compromise, and the machine's heat and bead suffice.</param>
public sealed record CoverageDocument(
    int Projects, ShareDocument Fits, ShareDocument Compromise, ShareDocument No, ShareDocument CanMake,
    IReadOnlyList<string> DecidingParts);

/// <summary>A share with its Wilson interval at the study's confidence.</summary>
public sealed record ShareDocument(int Count, double Share, double Low, double High);

/// <param name="Parts">Ids of its parts. Parts with the same <c>any_of</c> are alternatives: the best counts.</param>
/// <param name="Verdicts">One for each machine, in the order of <c>machines</c>.</param>
/// <param name="Need">What the whole project needs: the largest of its parts, the smallest of alternatives.</param>
public sealed record ProjectDocument(
    string Id, string Name, bool Wanted, IReadOnlyList<string> Parts,
    IReadOnlyList<ProjectVerdictDocument> Verdicts, NeedDocument? Need)
{
    /// <summary>The machine whose printed parts these are: then the project is in no share and no curve. Null for work.</summary>
    public string? PrintedPartsOf { get; init; }
}

/// <param name="Verdict">as_drawn, turned, tilted, scaled, in_pieces, no.</param>
/// <param name="CountsAs">fits, compromise, no.</param>
/// <param name="DecidedBy">Id of the part that decides, null where none does.</param>
public sealed record ProjectVerdictDocument(
    string Machine, [property: AllowedValues("as_drawn", "turned", "tilted", "scaled", "in_pieces", "no")] string Verdict,
    [property: AllowedValues("fits", "compromise", "no")] string CountsAs,
    bool CanMake, bool Tight, string? DecidedBy, string Reason);

/// <param name="CubeTurnedMm">Smallest cube without a compromise, mm.</param>
/// <param name="CubeTiltedMm">Smallest cube when tilting is accepted, mm; null where the user forbids it.</param>
/// <param name="CubeScaledMm">Smallest cube at the least scale the user accepts, mm; null where forbidden.</param>
/// <param name="CubeTiltedAtLeastMm">Proved lower bound of <c>cube_tilted_mm</c>.</param>
/// <param name="Heat">Temperatures its materials need; null where no material is named.</param>
public sealed record NeedDocument(
    double CubeTurnedMm, double? CubeTiltedMm, double? CubeScaledMm, double? CubeTiltedAtLeastMm,
    IReadOnlyList<IReadOnlyList<double>> TurnedCurveMm, IReadOnlyList<IReadOnlyList<double>> TiltedCurveMm,
    HeatDocument? Heat, double? ThinnestWallMm);

/// <param name="File">Path inside the study with forward slashes; null for a part given by its dimensions.</param>
/// <param name="AnyOf">Name of its group of alternatives, else null.</param>
/// <param name="SizeMm">Axis-aligned size as drawn, mm.</param>
/// <param name="Model">Picture geometry; null where the report leaves models out or there is no mesh.</param>
/// <param name="Picture">A small PNG as a data URI, see <c>PartPicture</c>.</param>
public sealed record PartDocument(
    string Id, string Name, string Project, string? File, string? Object, bool Wanted, int Quantity,
    string? Material, string? Colour, string? AnyOf, AllowanceDocument Allowed,
    IReadOnlyList<double> SizeMm, IReadOnlyList<double> TightestBoxMm, double? VolumeMm3, int Triangles, bool Closed,
    double? ThinnestWallMm, IReadOnlyList<FindingDocument> Findings, NeedDocument Need,
    IReadOnlyList<PartFitDocument> Fits, ModelDocument? Model, string? Picture)
{
    /// <summary>Built size over drawn size: 1 + shrinkage of its material.</summary>
    public required double Growth { get; init; }

    /// <summary>Who made the model, in the file's own words, one line of at most 160 characters; null where it does not say.</summary>
    public string? MadeBy { get; init; }

    /// <summary>Under which terms, likewise: the licence, the copyright notice, or both.</summary>
    public string? Licence { get; init; }
}

public sealed record AllowanceDocument(bool Turn, bool Tilt, bool Scale, bool Cut, double LeastScale);

/// <param name="PlacesMm">
/// Some places of it in the drawn part: x, y, z of a point, or of both ends of a stretch. Fewer than <paramref name="Count"/> where
/// there are many; none where it concerns the whole part.
/// </param>
public sealed record FindingDocument(
    string Code, int Count, string Message, IReadOnlyList<IReadOnlyList<double>> PlacesMm);

/// <summary>One part on one machine, as the contract's <c>fit</c> says it, plus the pose to draw.</summary>
/// <param name="Estimate">What building it takes; null where it is not taken whole, or cannot be or was not estimated.</param>
public sealed record PartFitDocument(
    string Machine, [property: AllowedValues("as_drawn", "turned", "tilted", "scaled", "in_pieces", "no")] string Verdict,
    [property: AllowedValues("fits", "compromise", "no")] string CountsAs,
    bool Tight, bool CanMake, bool Proved, int Pieces,
    IReadOnlyList<string> Reasons, WayDocument AsDrawn, WayDocument Upright, WayDocument Turned, WayDocument Tilted,
    double ClearanceMm, PoseDocument Pose, PartEstimateDocument? Estimate)
{
    /// <summary>
    /// What one copy adds to the cost of a machine that is there, in the currency of <c>sizing</c>: energy, filament, wear, somebody's
    /// time, failed builds, tax; null without an estimate or a price.
    /// </summary>
    public decimal? Cost { get; init; }

    /// <summary>
    /// To each wall that margins leave, mm, negative where the part sticks out, in the pose shown: that of the verdict, in full size
    /// about the same middle where it does not fit. A box has left, right, front, back, top; a cylinder its wall and top; a prism its
    /// sides in the order of its corners and top.
    /// </summary>
    public required IReadOnlyList<double> GapsMm { get; init; }

    /// <summary>The cuts of a part that fits in pieces, else null.</summary>
    public CutsDocument? Cuts { get; init; }
}

/// <summary>Parallel slices of equal thickness, each of which lies in the build volume by itself.</summary>
/// <param name="Direction">Unit normal of the cutting planes in the drawn part.</param>
/// <param name="BoundsMm">Where along it each piece begins and the last ends, mm: one more than pieces.</param>
/// <param name="Poses">Of each piece, as the drawn part is moved with it.</param>
public sealed record CutsDocument(
    IReadOnlyList<double> Direction, IReadOnlyList<double> BoundsMm, IReadOnlyList<PoseDocument> Poses);

/// <param name="Rotation">Unit quaternion w, x, y, z; null for <c>as_drawn</c>.</param>
/// <param name="UpperBound">Only for <c>tilted</c>.</param>
/// <param name="TranslationMm">With the scale and rotation the pose that reaches it; for the page's drawing.</param>
public sealed record WayDocument(
    bool Fits, double LargestScale, double? UpperBound, IReadOnlyList<double>? Rotation,
    IReadOnlyList<double>? TranslationMm = null);

/// <summary>Scale first, then rotate, then translate: where the part lies in the build volume's coordinates.</summary>
public sealed record PoseDocument(double Scale, IReadOnlyList<double> Rotation, IReadOnlyList<double> TranslationMm);

/// <summary>A simplified mesh to look at, in whole steps from its least corner: fine enough for the eye, small in the file.</summary>
/// <param name="LowMm">Least x, y, z, mm.</param>
/// <param name="StepMm">Length of a step, mm.</param>
/// <param name="Positions">Base64 of little-endian uint16: x, y, z of each point, in steps from <paramref name="LowMm"/>.</param>
/// <param name="Corners">Base64 of little-endian uint16: three points for each triangle.</param>
public sealed record ModelDocument(IReadOnlyList<double> LowMm, double StepMm, string Positions, string Corners);

/// <param name="Kind">fits or can_make.</param>
/// <param name="Heat">For can_make: what the imagined machine heats to.</param>
/// <param name="Like">Ids of the study's machines that heat like that.</param>
/// <param name="Steps">From each edge on (until the next), this many projects.</param>
public sealed record CurveDocument(
    [property: AllowedValues("fits", "can_make")] string Kind, HeatDocument? Heat, IReadOnlyList<string> Like, IReadOnlyList<CurveStepDocument> Steps);

/// <param name="Fits">Projects made without a compromise.</param>
/// <param name="WithCompromise">Projects made with or without a compromise.</param>
public sealed record CurveStepDocument(double EdgeMm, ShareDocument Fits, ShareDocument WithCompromise);

/// <summary>Parts that seem to be one thing: the same, mirrored, or at another scale.</summary>
/// <param name="Kind">same, scaled or mirrored.</param>
public sealed record AlikeDocument(
    [property: AllowedValues("same", "scaled", "mirrored")] string Kind, IReadOnlyList<string> Parts, double? Scale, string Message);

public sealed record UnusableDocument(string File, string Error);
