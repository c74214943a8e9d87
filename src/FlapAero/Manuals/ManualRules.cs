using System.Globalization;
using FlapAero.AeroplaneFiles;
using UnitsNet;

namespace FlapAero.Manuals;

/// <summary>What a manual's numbers must make together: wing, masses, stalls and approaches here, flights and landings in their own rules.</summary>
internal static class ManualRules
{
    // A clean trainer's wing, and the most that a light aeroplane's plain or slotted flaps have made of one.
    private const double LeastLift = 0.8;
    private const double MostLiftUp = 2.1;
    private const double MostLiftWithFlaps = 3.2;
    private const double FastestStallKnots = 61;

    public static void Check(ManualContent manual, FaultList faults)
    {
        CheckMasses(manual, faults);
        CheckWing(manual, faults);
        // With a fault in these the rest would only say it again.
        if (!faults.IsEmpty) return;
        var calibrations = new Calibrated(manual);
        CheckLift(manual, calibrations, faults);
        CheckOrder(manual, calibrations, faults);
        ManualFlightRules.Check(manual, calibrations, faults);
        ManualLandingRules.Check(manual, calibrations, faults);
    }

    private static void CheckMasses(ManualContent manual, FaultList faults)
    {
        Mass heaviest = manual.MaximumMass.Value;
        if (manual.MinimumMass is { } least && least.Value >= heaviest)
            Fault(least, $"is not less than the maximum, {manual.MaximumMass.Written}", "an aeroplane is flown from its minimum to its maximum mass" + Pounds(least, Mass.Zero, heaviest), faults);
        Mass lightest = manual.MinimumMass?.Value ?? Mass.Zero;
        foreach (Printed<Mass> mass in Masses(manual).OfType<Printed<Mass>>())
        {
            double slack = mass.Step();
            if (mass.Value.Kilograms <= heaviest.Kilograms + slack && mass.Value.Kilograms >= lightest.Kilograms - slack) continue;
            Fault(
                mass, $"lies outside the masses of this aeroplane, {manual.MinimumMass?.Written ?? "none given"} to {manual.MaximumMass.Written}",
                "every row is flown between them" + Pounds(mass, lightest, heaviest), faults);
        }
    }

    private static IEnumerable<Printed<Mass>?> Masses(ManualContent manual) =>
    [
        .. manual.Stalls.Select(row => row.Mass), .. manual.Glides.Select(row => row.Mass), .. manual.Approaches.Select(row => row.Mass),
        .. manual.Landings.Select(row => row.Mass), .. manual.LevelFlights.Select(row => row.Mass), .. manual.Climbs.Select(row => row.Mass),
    ];

    private static void CheckWing(ManualContent manual, FaultList faults)
    {
        double ratio = manual.Span.Value.Meters * manual.Span.Value.Meters / manual.Area.Value.SquareMeters;
        if (ratio is >= 4 and <= 25) return;
        string guess = "";
        double swapped = manual.Span.Unit is "m"
            ? Math.Pow(Length.FromFeet(manual.Span.Number).Meters, 2) / manual.Area.Value.SquareMeters
            : Math.Pow(manual.Span.Number, 2) / manual.Area.Value.SquareMeters;
        if (swapped is >= 4 and <= 25) guess = Text($"; did you mean {manual.Span.Number} {(manual.Span.Unit is "m" ? "ft" : "m")}?");
        Fault(manual.Span, Text($"with an area of {manual.Area.Written} makes an aspect ratio of {ratio:0.0}"), "allowed is 4 to 25: light aeroplanes have wings of this kind" + guess, faults);
    }

    private static void CheckLift(ManualContent manual, Calibrated calibrated, FaultList faults)
    {
        for (int i = 0; i < manual.Settings.Count; i++)
        {
            PrintedStall[] rows = [.. manual.Stalls.Where(row => row.Flaps == i)];
            if (rows.Length == 0) continue;
            double most = i == 0 ? MostLiftUp : MostLiftWithFlaps;
            double[] lifts = [.. rows.Select(row => calibrated.Lift(row))];
            double middle = lifts.Order().ElementAt(lifts.Length / 2);
            if (middle < LeastLift || middle > most)
            {
                PrintedStall row = rows[Array.IndexOf(lifts, middle)];
                Mass mass = row.Mass?.Value ?? manual.MaximumMass.Value;
                Fault(
                    row.Speed, Text($"with {mass.Kilograms:0} kg on {manual.Area.Value.SquareMeters:0.0} m2, flaps {manual.Settings[i].Name}, needs a C_Lmax of {middle:0.00}"),
                    Text($"allowed is {LeastLift} to {most}: no light aeroplane's wing has another") + Guess(manual, row, middle, most), faults);
                return;
            }

            // What one row alone has wrong shows against the others of its setting.
            for (int k = 0; k < rows.Length; k++)
            {
                double expected = rows[k].Speed.Value.Value.Knots * Math.Sqrt(lifts[k] / middle);
                double slack = 1.5 * rows[k].Speed.StepKnots() + 0.05 * expected + (rows[k].Speed.Value.Kind == AirspeedKind.Indicated ? 2 : 0);
                if (Math.Abs(expected - rows[k].Speed.Value.Value.Knots) <= slack) continue;
                Fault(
                    rows[k].Speed, Text($"does not go with the other stalls of flaps {manual.Settings[i].Name}: by √(n W) they make it {Number(rows[k].Speed, expected)}"),
                    "is the row's mass, bank or flap setting right, or indicated and calibrated exchanged?", faults);
            }
        }
    }

    private static string Guess(ManualContent manual, PrintedStall row, double lift, double most)
    {
        bool Fits(double value) => value >= LeastLift && value <= most;
        Printed<Mass> mass = row.Mass ?? manual.MaximumMass;
        double pounds = Mass.FromPounds(1).Kilograms;
        if (mass.Unit == "kg" && Fits(lift * pounds)) return Text($"; did you mean {mass.Number} lb?");
        if (mass.Unit == "lb" && Fits(lift / pounds)) return Text($"; did you mean {mass.Number} kg?");
        double knot = Speed.FromKnots(1).MilesPerHour;
        if (row.Speed.Unit.StartsWith('K') && Fits(lift * knot * knot)) return Text($"; did you mean {row.Speed.Number} mph?");
        return "; are mass, area and speed right?";
    }

    private static void CheckOrder(ManualContent manual, Calibrated calibrated, FaultList faults)
    {
        foreach (PrintedStall row in manual.Stalls.Where(row => row.Flaps > 0))
        {
            PrintedStall? less = manual.Stalls.Where(other => other.Flaps < row.Flaps && Same(other.Mass, row.Mass, manual) && other.Bank?.Number.Equals(row.Bank?.Number ?? 0) != false
                && (other.Bank is null == row.Bank is null)).MaxBy(other => other.Flaps);
            if (less is null) continue;
            if (calibrated.Knots(row.Speed, row.Flaps) <= calibrated.Knots(less.Speed, less.Flaps) + 0.5) continue;
            Fault(
                row.Speed, $"with flaps {manual.Settings[row.Flaps].Name} is faster than {less.Speed.Written} with flaps {manual.Settings[less.Flaps].Name}",
                "flaps add lift, so they do not raise the stalling speed; are the two rows exchanged?", faults);
        }

        int full = manual.Settings.Count - 1;
        PrintedStall? heaviest = manual.Stalls.FirstOrDefault(row => row.Flaps == full && row.Mass is null && row.Bank is null);
        if (faults.IsEmpty && heaviest is not null && calibrated.Knots(heaviest.Speed, full) > FastestStallKnots)
            Fault(
                heaviest.Speed, Text($"is {calibrated.Knots(heaviest.Speed, full):0.0} kt calibrated in the landing configuration"),
                Text($"a light aeroplane with one engine stalls at {FastestStallKnots} kt or less there (CS 23.49)"), faults);
        foreach (PrintedApproach row in manual.Approaches)
            calibrated.AboveStall(row.Speed, row.Flaps, row.Mass, 1.05, "an approach speed leaves a margin over the stall, about 1.3 of it", faults);
        foreach (PrintedLanding row in manual.Landings)
            if (row.ApproachSpeed is { } speed)
                calibrated.AboveStall(speed, row.Flaps, row.Mass, 1.05, "an approach speed leaves a margin over the stall, about 1.3 of it", faults);
        if (manual.FlapsUp?.Speed is { } flapless)
            calibrated.AboveStall(flapless, 0, null, 1.05, "an approach speed leaves a margin over the stall, about 1.3 of it", faults);
    }

    private static bool Same(Printed<Mass>? first, Printed<Mass>? second, ManualContent manual) =>
        Math.Abs((first?.Value ?? manual.MaximumMass.Value).Kilograms - (second?.Value ?? manual.MaximumMass.Value).Kilograms) < 2;

    private static string Pounds(Printed<Mass> mass, Mass lightest, Mass heaviest)
    {
        bool isPounds = mass.Unit == "lb";
        Mass other = isPounds ? Mass.FromKilograms(mass.Number) : Mass.FromPounds(mass.Number);
        return other >= lightest && other <= heaviest && other.Kilograms > 150 ? Text($"; did you mean {mass.Number} {(isPounds ? "kg" : "lb")}?") : "";
    }

    public static void Fault<T>(Printed<T> at, string problem, string expected, FaultList faults) =>
        faults.Add(at.At.Line, at.At.Place, $"{at.Written} {problem}", expected);

    public static string Number(Printed<PrintedAirspeed> like, double knots) =>
        Text($"{ManualUnits.In(Speed.FromKnots(knots), like.Unit):0} {like.Unit}");

    public static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
