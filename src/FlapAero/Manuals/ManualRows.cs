using FlapAero.AeroplaneFiles;
using UnitsNet;

namespace FlapAero.Manuals;

/// <summary>The tables of a manual's file, row by row.</summary>
internal sealed class ManualRows(ManualPart root, IReadOnlyList<PrintedSetting> settings, FaultList faults)
{
    private static readonly Dictionary<string, GlidePropeller> Propellers = new(StringComparer.OrdinalIgnoreCase)
    {
        ["idling"] = GlidePropeller.Idling,
        ["stopped"] = GlidePropeller.Stopped,
        ["none"] = GlidePropeller.None,
    };

    private static readonly Dictionary<string, bool> GlideKinds =
        new(StringComparer.OrdinalIgnoreCase) { ["best"] = true, ["at this speed"] = false };

    public IReadOnlyList<PrintedStall> Stalls()
    {
        List<PrintedStall> rows = [];
        foreach ((ManualPart part, _) in root.List("stallSpeeds", ManualKeys.Stall))
        {
            int? flaps = Flaps(part, null);
            Printed<Mass>? mass = MassOf(part);
            Printed<Angle>? bank = part.Value("bank", UnitSets.Angles, Angle.Zero, Angle.FromDegrees(75), "Manuals give stalls to 60°.");
            Printed<PrintedAirspeed>? speed = Speed(part, "speed", 20, 110, "Light aeroplanes stall inside it.");
            if (flaps is { } setting && speed is not null) rows.Add(new(setting, mass, bank, speed));
        }

        return rows;
    }

    public IReadOnlyList<PrintedGlide> Glides()
    {
        List<PrintedGlide> rows = [];
        foreach ((ManualPart part, string place) in root.List("glides", ManualKeys.Glide))
        {
            bool? isBest = part.Word("is", GlideKinds);
            GlidePropeller? propeller = part.Word("propeller", Propellers);
            int? flaps = Flaps(part, 0);
            Printed<Mass>? mass = MassOf(part);
            Printed<PrintedAirspeed>? speed = Speed(part, "speed", 30, 150, "Light aeroplanes glide inside it.");
            Printed<double>? ratio = part.Number("ratio", 3, 40, "Distance over height lost.", GuessRatio);
            if (isBest is not { } best || propeller is not { } turning || flaps is not { } setting) continue;
            if (!best && speed is null && faults.IsEmpty)
                faults.Add(part.Line, FaultList.Inside(place, "speed"), "the key is missing", "a glide \"at this speed\" names the speed");
            if (speed is null && ratio is null && faults.IsEmpty)
                faults.Add(part.Line, place, "neither speed nor ratio stands here", "a glide has one of them at least");
            rows.Add(new(best, setting, turning, mass, speed, ratio));
        }

        return rows;
    }

    public IReadOnlyList<PrintedApproach> Approaches()
    {
        List<PrintedApproach> rows = [];
        foreach ((ManualPart part, _) in root.List("approachSpeeds", ManualKeys.Approach))
        {
            int? flaps = Flaps(part, null);
            Printed<Mass>? mass = MassOf(part);
            Printed<PrintedAirspeed>? speed = Speed(part, "speed", 30, 150, "Light aeroplanes approach inside it.");
            if (flaps is { } setting && speed is not null) rows.Add(new(setting, mass, speed));
        }

        return rows;
    }

    public IReadOnlyList<PrintedLanding> Landings()
    {
        List<PrintedLanding> rows = [];
        foreach ((ManualPart part, string place) in root.List("landings", ManualKeys.Landing))
        {
            int? flaps = Flaps(part, settings.Count - 1);
            Printed<Mass>? mass = MassOf(part);
            Printed<PrintedAirspeed>? approach = Speed(part, "approachSpeed", 30, 150, "Light aeroplanes approach inside it.");
            PrintedDay day = Day(part);
            Printed<Speed>? wind = part.Value(
                "headwind", UnitSets.Speeds, UnitsNet.Speed.FromKnots(-15), UnitsNet.Speed.FromKnots(40), "A tailwind is negative.");
            RunwaySurface surface = Surface(part);
            Printed<Length>? roll = Distance(part, "groundRoll", 100), total = Distance(part, "from50ft", 300);
            if (roll is null && total is null && faults.IsEmpty)
                faults.Add(part.Line, place, "neither groundRoll nor from50ft stands here", "a landing has one of them at least");
            if (flaps is { } setting) rows.Add(new(setting, mass, approach, day, wind, surface, roll, total, part.Line));
        }

        return rows;
    }

    public PrintedFlapsUp? FlapsUp()
    {
        if (root.Object("flapsUpLanding", ManualKeys.FlapsUpLanding) is not { } part) return null;
        Printed<double>? factor = part.Number(
            "distanceFactor", 1, 3, "Without flaps a landing is longer.",
            value => value is > 3 and <= 200 ? FormattableString.Invariant($" Did you mean {1 + value / 100}?") : null);
        return new(factor, Speed(part, "speed", 30, 150, "Light aeroplanes approach inside it."));
    }

    public IReadOnlyList<PrintedLevelFlight> LevelFlights()
    {
        List<PrintedLevelFlight> rows = [];
        foreach ((ManualPart part, _) in root.List("levelFlights", ManualKeys.LevelFlight))
        {
            PrintedDay day = Day(part);
            Printed<Mass>? mass = MassOf(part);
            Printed<RotationalSpeed>? turning = part.Value(
                "engineSpeed", UnitSets.RotationalSpeeds, RotationalSpeed.FromRevolutionsPerMinute(1200),
                RotationalSpeed.FromRevolutionsPerMinute(6000), "The propeller's speed in level flight.");
            Printed<PrintedAirspeed>? speed = Speed(part, "speed", 50, 200, "Light aeroplanes fly level inside it.", trueToo: true);
            if (turning is not null && speed is not null) rows.Add(new(day, mass, turning, speed));
        }

        return rows;
    }

    public IReadOnlyList<PrintedClimb> Climbs()
    {
        List<PrintedClimb> rows = [];
        foreach ((ManualPart part, _) in root.List("climbs", ManualKeys.Climb))
        {
            PrintedDay day = Day(part);
            int? flaps = Flaps(part, 0);
            Printed<Mass>? mass = MassOf(part);
            Printed<PrintedAirspeed>? speed = Speed(part, "speed", 40, 150, "Light aeroplanes climb inside it.");
            Printed<Speed>? rate = part.Value(
                "rate", ManualUnits.Rates, UnitsNet.Speed.FromFeetPerMinute(10), UnitsNet.Speed.FromFeetPerMinute(3000), "Light aeroplanes climb inside it.");
            if (flaps is { } setting && speed is not null && rate is not null) rows.Add(new(day, setting, mass, speed, rate));
        }

        return rows;
    }

    private static string? GuessRatio(double value) =>
        value is >= 0.6 and < 3 ? FormattableString.Invariant($" Nautical miles per 1000 ft? That is {value * 6.076:0.0}.")
        : value is > 40 and < 400 ? FormattableString.Invariant($" Did you mean {value / 10:0.#}?") : null;

    private static Printed<Length>? Distance(ManualPart part, string key, double leastFeet) => part.Value(
        key, UnitSets.Lengths, Length.FromFeet(leastFeet), Length.FromFeet(8000), "Light aeroplanes land inside it.");

    private static Printed<Mass>? MassOf(ManualPart part) => part.Value(
        "mass", UnitSets.Masses, Mass.FromKilograms(100), Mass.FromKilograms(5700), "Light aeroplanes are flown inside it.");

    private static PrintedDay Day(ManualPart part)
    {
        Printed<Length>? altitude = part.Value(
            "pressureAltitude", UnitSets.Lengths, Length.FromFeet(-1500), Length.FromFeet(18000), "Light aeroplanes' tables lie inside it.");
        Printed<Temperature>? outside = part.Value(
            "temperature", ManualUnits.Temperatures, Temperature.FromDegreesCelsius(-45), Temperature.FromDegreesCelsius(55), "Nobody lands outside it.");
        return new(altitude, outside);
    }

    private RunwaySurface Surface(ManualPart part)
    {
        if (part.Part.Text("surface") is not { } text) return RunwaySurface.DryPaved;
        if (RunwaySurface.ByName.TryGetValue(text.Value.Trim(), out RunwaySurface? surface)) return surface;
        part.RefuseWord(text, RunwaySurface.ByName.Keys);
        return RunwaySurface.DryPaved;
    }

    private Printed<PrintedAirspeed>? Speed(ManualPart part, string key, double low, double high, string why, bool trueToo = false)
    {
        if (part.Value(key, ManualUnits.Airspeeds, ManualReader.At(low), ManualReader.At(high), why) is not { } speed) return null;
        if (trueToo || speed.Value.Kind != AirspeedKind.True) return speed;
        faults.Add(speed.At.Line, speed.At.Place, $"{speed.Written} is a true airspeed", "this speed is indicated or calibrated: KIAS or KCAS");
        return null;
    }

    private int? Flaps(ManualPart part, int? without)
    {
        if (part.Part.Text("flaps") is not { } text) return without;
        for (int i = 0; i < settings.Count; i++)
            if (string.Equals(settings[i].Name, text.Value.Trim(), StringComparison.OrdinalIgnoreCase)) return i;
        // A list of settings that could not be read has no names to compare with.
        if (settings.Count > 0) part.RefuseWord(text, settings.Select(setting => setting.Name));
        return null;
    }
}
