using CsCheck;
using Platewright.Machines;
using Platewright.Sizing.Cases;
using Platewright.Sizing.Money;

namespace Platewright.Tests.Sizing.Money;

public sealed class CostAccountTests
{
    private static readonly Gen<CostNumbers> Numbers =
        from a in Gen.Double[0, 1].Array[8]
        from life in Gen.Double[0.5, 20]
        select new CostNumbers(
            a[0], 40 * a[1], a[2], 50 * a[3], 0.9 * a[4], life, a[5], 10 * a[6], 20 * a[7], 2, 0.01, 8, 5);

    private static readonly Gen<Load> Loads =
        from a in Gen.Double[0, 500].Array[5]
        select new Load(a[0], a[1], a[2], true, a[3], a[4] / 100);

    private static readonly Gen<SizedMachine> Machines = Gen.Int[0, 5000].Select(price => MachineOf(price));

    [Fact]
    public void Account_HandMade_IsAsReckoned()
    {
        // 600 with nothing left after 5 years: 10 a month. 100 h at 1 per 100 h: 1. 20 kWh at 0.30: 6. 2 kg at 25: 50. Half of all
        // builds fail: everything of the work once more. 10 % tax on 10 and on 57 twice.
        CostNumbers n = new(0.30, 0, 0.1, 25, 0.5, 5, 0, 0, 0, 0, 0, 0, 0);
        SizedMachine machine = MachineOf(600) with { Upkeep = new Upkeep { WearPer100H = 1 } };

        CostAccount a = CostAccount.Of(machine, 1, new Load(10, 100, 20, true, 0, 2), n);

        Assert.Equal((10m, 1m, 6m, 50m), (a.Purchase, a.Wear, a.Energy, a.Filament));
        Assert.Equal((57m, 1m, 11.4m), (a.FailedBuilds, a.OwningTax, a.WorkTax));
        Assert.Equal(136.4m, a.Total);
        Assert.Equal(660m, CostAccount.Upfront(machine, 1, n));
    }

    [Fact]
    public void Account_Lines_AddUpExactly() => Gen.Select(Machines, Gen.Int[0, 9], Loads, Numbers).Sample((machine, count, load, numbers) =>
    {
        CostAccount a = CostAccount.Of(machine, count, load, numbers, 12.3456m);

        Assert.Equal(
            a.Total,
            a.Purchase + a.PrintedParts + a.Assembling + a.Tuning + a.OwningTax + a.Maintaining + a.Wear + a.Energy + a.Filament
            + a.Handling + a.FailedBuilds + a.WorkTax);
        Assert.Equal(a.Total, a.Owning + a.Working);
        Assert.True(a.Owning >= 0 && a.Working >= 0);
    });

    [Fact]
    public void Account_WorkOfTwoMonths_IsTheSumOfBothToRounding() => Gen.Select(Machines, Loads, Loads, Numbers).Sample((machine, x, y, numbers) =>
    {
        decimal together = CostAccount.Of(machine, 0, x + y, numbers).Working;
        decimal apart = CostAccount.Of(machine, 0, x, numbers).Working + CostAccount.Of(machine, 0, y, numbers).Working;

        // Nine roundings to 1/10,000 on each side, taken up by failures up to tenfold and tax.
        Assert.InRange(together - apart, -0.01m, 0.01m);
    });

    [Fact]
    public void Rates_OfALoad_AreItsAccount() => Gen.Select(Machines, Loads, Numbers).Sample((machine, load, numbers) =>
        Assert.InRange(
            WorkingRates.Of(machine, numbers).Cost(load) - CostAccount.Of(machine, 0, load, numbers).Working, -0.01m, 0.01m));

    /// <summary>Geometric attempts at the student studio's 41.1 % are 1.70: reference physics, section 7.</summary>
    [Fact]
    public void Attempts_OpenStudio_Are170() => Assert.Equal(1.70, Failures.AttemptsFor(0.411), 0.005);

    private static SizedMachine MachineOf(decimal price) => new("m", "m", 200, price, 0.2, null, null, new Upkeep());
}
