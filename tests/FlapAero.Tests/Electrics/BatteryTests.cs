using CsCheck;
using FlapAero.Tests.Properties;
using UnitsNet;

namespace FlapAero.Tests.Electrics;

public sealed class BatteryTests
{
    private static readonly Gen<(double Charge, double Hours, double Exponent, double Share)> AnyBattery =
        Gen.Select(Gen.Double[1, 200], Gen.Double[0.1, 100], Gen.Double[1, 2], Gen.Double[0.05, 1]);

    // The numbers of a flying handbook: 25 Ah that last 5 h at 5 A last only 2 h at 10 A, and 10 to 15 minutes at 40 A [afh].
    // The first two make the exponent ln 2.5/ln 2 = 1.32; with it the third comes out at 19 minutes: one exponent flatters the heavy load.
    [Fact]
    public void Endurance_HandbookBattery_GivesTheSecondTimeAndFlattersTheThird()
    {
        var battery = new Battery(ElectricCharge.FromAmpereHours(25), Duration.FromHours(5), Math.Log(2.5) / Math.Log(2));

        Assert.Equal(5, battery.RatedCurrent.Amperes, 1e-12);
        Assert.Equal(2, battery.Endurance(Amperes(10)).Hours, 1e-9);
        Assert.Equal(19.2, battery.Endurance(Amperes(40)).Minutes, 0.05);
    }

    [Fact]
    public void Endurance_Demo_IsThatWorkedByHand()
    {
        // 60 min · (20/30)^1.15 = 60 · 0.62732 = 37.6; nine minutes of it are 9/37.64 = 0.239.
        Assert.Equal(30, ElectricalLoad.Together(DemoElectrics.Loads).Amperes, 1e-12);
        Assert.Equal(37.64, DemoElectrics.Battery.Endurance(DemoElectrics.Loads).Minutes, 0.01);
        Assert.Equal(0.2391, DemoElectrics.Battery.ShareTaken(Amperes(30), Duration.FromMinutes(9)), 1e-4);
    }

    [Fact]
    public void Endurance_ShareLeft_IsProportional() => AnyBattery.Sample(
        b =>
        {
            Battery full = Made(b), part = full.Left(full.ShareLeft / 2);
            Close.To(full.Endurance(full.RatedCurrent * 3).Seconds, 2 * part.Endurance(part.RatedCurrent * 3).Seconds);
        },
        iter: Generators.Many);

    [Fact]
    public void Endurance_TwiceTheCurrent_IsHalfOrLess() => Gen.Select(AnyBattery, Gen.Double[0.01, 25]).Sample(
        (b, times) =>
        {
            Battery battery = Made(b);
            double once = battery.Endurance(battery.RatedCurrent * times).Seconds, twice = battery.Endurance(battery.RatedCurrent * times * 2).Seconds;
            Close.To(Math.Pow(2, battery.Exponent), once / twice, 1e-9);
        },
        iter: Generators.Many);

    [Fact]
    public void CurrentFor_OfAnEndurance_IsTheCurrent() => Gen.Select(AnyBattery, Gen.Double[0.02, 40]).Sample(
        (b, times) =>
        {
            Battery battery = Made(b);
            ElectricCurrent current = battery.RatedCurrent * times;
            Close.To(current.Amperes, battery.CurrentFor(battery.Endurance(current)).Amperes, 1e-9);
        },
        iter: Generators.Many);

    [Fact]
    public void ShareTaken_OverTheEndurance_IsAllThatWasLeft() => AnyBattery.Sample(
        b =>
        {
            Battery battery = Made(b);
            Close.To(battery.ShareLeft, battery.ShareTaken(battery.RatedCurrent * 2, battery.Endurance(battery.RatedCurrent * 2)), 1e-9);
        },
        iter: Generators.Many);

    [Fact]
    public void Load_OfPower_DrawsPowerOverVoltage()
    {
        var lamp = new ElectricalLoad("lamp", Power.FromWatts(108), ElectricPotential.FromVolts(12), 0.5);

        Assert.Equal(9, lamp.Current.Amperes, 1e-12);
        Assert.Equal(4.5, lamp.MeanCurrent.Amperes, 1e-12);
        Assert.Equal(9, lamp.OnFor(1).MeanCurrent.Amperes, 1e-12);
    }

    [Fact]
    public void Refusals_OutOfRange_NameQuantityValueAndRange()
    {
        Battery battery = DemoElectrics.Battery;
        Refused(() => battery.Endurance(ElectricCurrent.Zero), "current: 0 A is refused; allowed is 0.2 A to 1000 A.");
        Refused(() => battery.Endurance([]), "current: 0 A is refused");
        Refused(() => battery.Endurance(ElectricCurrent.FromMilliamperes(100)), "current: 100 mA is refused; allowed is 200 mA to ");
        Refused(() => battery.Left(0), "share left: 0 is refused");
        Refused(() => battery.Left(1.1), "share left: 1.1 is refused");
        Refused(() => battery.CurrentFor(Duration.FromSeconds(1)), "time on the battery: 1 s is refused");
        Refused(() => battery.ShareTaken(battery.RatedCurrent, Duration.FromMinutes(-1)), "time on the battery: -1 min is refused");
        Refused(() => _ = new Battery(ElectricCharge.FromAmpereHours(300), Duration.FromHours(1), 1.1), "rated charge: 300 Ah is refused; allowed is 1 Ah to 200 Ah.");
        Refused(() => _ = new Battery(ElectricCharge.FromAmpereHours(30), Duration.FromMinutes(1), 1.1), "rated time: 1 min is refused; allowed is 6 min to 6000 min.");
        Refused(() => _ = new Battery(ElectricCharge.FromAmpereHours(30), Duration.FromHours(1), 0.9), "Peukert's exponent: 0.9 is refused; allowed is 1 to 2.");
        Refused(() => _ = new ElectricalLoad("lamp", Amperes(-1)), "current of a load: -1 A is refused; allowed is 0 A to 200 A.");
        Refused(() => _ = new ElectricalLoad("lamp", Power.FromWatts(10), ElectricPotential.FromVolts(1)), "voltage: 1 V is refused; allowed is 6 V to 60 V.");
        Refused(() => _ = new ElectricalLoad("lamp", Amperes(1), 1.5), "share of the time: 1.5 is refused; allowed is 0 to 1.");
        Assert.Throws<RefusedInputException>(() => new ElectricalLoad(" ", Amperes(1)));
    }

    private static void Refused(Action call, string message) =>
        Assert.StartsWith(message, Assert.Throws<RefusedInputException>(call).Message, StringComparison.Ordinal);

    private static Battery Made((double Charge, double Hours, double Exponent, double Share) b) =>
        new(ElectricCharge.FromAmpereHours(b.Charge), Duration.FromHours(b.Hours), b.Exponent, b.Share);

    private static ElectricCurrent Amperes(double amperes) => ElectricCurrent.FromAmperes(amperes);
}
