using Platewright.Machines;
using Platewright.Sizing;
using Platewright.Sizing.Cases;
using Platewright.Sizing.Covering;
using Platewright.Sizing.Statistics;
using Platewright.Tests.Sizing.Answers;

namespace Platewright.Tests.Sizing;

/// <summary>Hours and money on the size line and the price line, against what is worked by hand and against single shares.</summary>
public sealed class MeasuredCurveTests
{
    private static readonly HeatLimits Warm = new(260, 90, 40);

    /// <summary>Edges needed are 50, 60 and 70 mm; hours a month 4 × 1.5, 2 × 3 and 1 × 7.</summary>
    private static readonly SizingCase Case = Cases.Of(
        [Cases.Machine("small", 65, 900), Cases.Machine("large", 300, 1500), Cases.Machine("unpriced", 400, null)],
        Cases.Project(0, 4, 2, 1.5, 1.5), Cases.Project(1, 2, 5, 3, 3), Cases.Project(2, 1, null, 7, 7)) with
    { Heats = [new HeatLevel(Warm, ["small", "large", "unpriced"])] };

    [Fact]
    public void Hours_AreAddedUpAsTheEdgeGrows()
    {
        MeasuredCurve hours = MeasuredCurve.Of(Case, [null, null, null]).Single(c => c.Measure == Measure.Hours && c.Level is null);
        Assert.Equal([50.0, 60, 70], hours.Steps.Select(s => s.EdgeMm));
        Assert.Equal([6.0, 12, 19], hours.Steps.Select(s => s.WithCompromise.Covered));
        Assert.Equal((19.0, 0), (hours.Total, hours.LeftOut));
    }

    [Fact]
    public void EachStep_HasTheIntervalOfItsShareAlone()
    {
        double?[] money = [1, 5, 100];
        MeasuredCurve curve = MeasuredCurve.Of(Case, money).Single(c => c.Measure == Measure.Money && c.Level is not null);
        double[][] covered = [[1, 0, 0], [1, 1, 0], [1, 1, 1]];
        var alone = WeightedShare.Of(money, covered, Resamples.Of(3), Case.Confidence);
        for (int step = 0; step < 3; step++)
        {
            WeightedShare found = curve.Steps[step].WithCompromise;
            Assert.Equal(alone[step].Covered, found.Covered, 1e-12);
            Assert.Equal(alone[step].Low, found.Low, 1e-12);
            Assert.Equal(alone[step].High, found.High, 1e-12);
        }
    }

    [Fact]
    public void UnknownMoney_IsLeftOutAndCounted()
    {
        MeasuredCurve curve = MeasuredCurve.Of(Case, [10, null, 30]).First(c => c.Measure == Measure.Money);
        Assert.Equal((40.0, 1), (curve.Total, curve.LeftOut));
        Assert.Equal([10.0, 10, 40], curve.Steps.Select(s => s.Fits.Covered));
    }

    [Fact]
    public void WorkCosts_AreTheLeastOfAnyPricedMachine()
    {
        // By hand, usual assumptions changed so that only energy and filament cost: 1 kWh at 0.5 and 100 g at 20 a kg for each build.
        SizingCase plain = Case with
        {
            Costs = Case.Costs with
            {
                EnergyPerKwh = new(0.5, 0.5, 0.5, "test"),
                LabourPerH = new(0, 0, 0, "test"),
                TaxShare = new(0, 0, 0, "test"),
                FailureShare = new(0, 0, 0, "test"),
                WearSharePer100H = new(0, 0, 0, "test"),
            },
        };
        Assert.Equal([4 * 2.5, 2 * 2.5, 2.5], WorkCosts.Of(plain).Select(c => c!.Value), (a, b) => Math.Abs(a - b) < 1e-9);
        SizingCase priceless = plain with { Machines = [.. plain.Machines.Select(m => m with { Price = null })] };
        Assert.All(WorkCosts.Of(priceless), c => Assert.Null(c));
    }

    [Fact]
    public void WhatNoPricedMachineMakes_CostsItsReckonedHoursAndFilament()
    {
        SizingCase c = Case with { Machines = [Case.Machines[0], Case.Machines[1] with { Price = null }, Case.Machines[2]] };
        Assert.All(WorkCosts.Of(c), cost => Assert.True(cost > 0));
    }

    [Fact]
    public void Price_TakesTheBestMachineUpToIt_AndNoMachineWithoutOne()
    {
        PriceCurve curve = PriceCurve.Of(Case, WorkCosts.Of(Case)).Single(c => c.Measure == Measure.Hours && c.CanMake);
        Assert.Equal([(900m, 0), (1500m, 1)], curve.Steps.Select(s => (s.Price, s.Machine)));
        Assert.Equal([12.0, 19], curve.Steps.Select(s => s.WithCompromise.Covered));
        PriceCurve projects = PriceCurve.Of(Case, WorkCosts.Of(Case)).First(c => c.Measure == Measure.Projects);
        Share plain = Share.Wilson(2, 3, Case.Confidence);
        Assert.Equal((plain.Low, plain.High), (projects.Steps[0].WithCompromise.Low, projects.Steps[0].WithCompromise.High));
    }

    [Fact]
    public void DearerMachineThatTakesLess_MakesNoStep()
    {
        SizingCase turned = Case with { Machines = [Case.Machines[0] with { Price = 2000 }, Case.Machines[1], Case.Machines[2]] };
        PriceStep only = Assert.Single(PriceCurve.Of(turned, WorkCosts.Of(turned)).First(c => c.Measure == Measure.Money).Steps);
        Assert.Equal((1500m, 1), (only.Price, only.Machine));
    }
}
