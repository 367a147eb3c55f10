using Platewright.Fit;
using Platewright.Study.Deciding;
using Platewright.Study.Documents;
using Platewright.Study.Examining;
using Platewright.Study.Judgement;

namespace Platewright.Study.Describing;

/// <summary>A part as the documents show it.</summary>
internal static class PartDescription
{
    public static PartDocument Of(StudiedPart studied, StudiedProject project, StudyPlan plan, bool withModels)
    {
        PlannedPart planned = studied.Part.Planned;
        ExaminedPart? found = studied.Part.Examined;
        PartLook look = found?.Look ?? PartLook.OfBox(studied.Part.SizeMm);
        IReadOnlyList<double> size = MachineDescription.Numbers(studied.Part.SizeMm);
        return new PartDocument(
            studied.Id, studied.Part.Name, project.Id, found?.File, found?.Object, found is null, planned.Quantity,
            studied.Part.Material?.Name ?? found?.Material, planned.Colour ?? found?.Colour, planned.AnyOf, Of(planned.Allowance),
            size, found?.TightestBoxMm ?? [.. size.OrderDescending()], found is null ? size[0] * size[1] * size[2] : found.VolumeMm3,
            found?.Triangles ?? 0, found?.Closed ?? true, found?.ThinnestWallMm, FindingsDescription.Of(found?.Findings ?? [], studied.Part.SizeMm),
            NeedDescription.Of(studied.Need),
            [
                .. studied.Fits.Select((f, m) => FitDescription.Of(
                    plan.Machines[m], studied.Part, f, studied.Estimates[m],
                    studied.Estimates[m] is { } e ? PartCost.Of(studied.Part, e, plan.Machines[m], plan.Sizing) : null)),
            ],
            withModels ? look.Model : null, look.Picture)
        {
            Growth = 1 + studied.Part.Shrinkage,
            MadeBy = found?.MadeBy,
            Licence = found?.Licence,
        };
    }

    private static AllowanceDocument Of(Allowance a) => new(a.Turn, a.Tilt, a.LeastScale < 1, a.Cut, a.LeastScale);
}
