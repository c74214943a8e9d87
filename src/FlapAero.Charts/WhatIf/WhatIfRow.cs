namespace FlapAero.Charts;

/// <summary>One number of a what-if answer: its name in the answer, its words, and how it is read off. Immutable.</summary>
/// <param name="Key">Its name in the answer's JSON and in the CSV.</param>
/// <param name="Label">Its name in the table.</param>
/// <param name="Unit">Its unit in the answer, whatever the page shows.</param>
/// <param name="Digits">Decimals of the table.</param>
/// <param name="Part">Under which heading it stands.</param>
internal sealed record WhatIfRow(string Key, string Label, string Unit, int Digits, string Part)
{
    private const string Speeds = "Speeds", Approach = "On the path", Runway = "From the threshold";

    /// <summary>All rows, in their order.</summary>
    public static IReadOnlyList<WhatIfRow> All { get; } =
    [
        new("stall", "Stalling speed, calibrated", "kt", 1, Speeds),
        new("reference", "Reference speed, calibrated", "kt", 1, Speeds),
        new("stallIndicated", "Stalling speed, indicated", "kt", 1, Speeds),
        new("approach", "Approach speed with gust and addition, calibrated", "kt", 1, Speeds),
        new("approachIndicated", "Approach speed, indicated", "kt", 1, Speeds),
        new("approachTrue", "Approach speed, true", "kt", 1, Speeds),
        new("ground", "Speed over the ground", "kt", 1, Approach),
        new("sinkOnPath", "Rate of descent", "ft/min", 0, Approach),
        new("engine", "Engine speed that holds the path", "rpm", 0, Approach),
        new("pitch", "Pitch attitude", "°", 1, Approach),
        new("glide", "Glide with the throttle closed, angle over the ground", "°", 1, Approach),
        new("glideRatio", "Glide: distance for each unit of height", "", 1, Approach),
        new("roundOut", "Round-out begins at a wheel height of", "ft", 0, Runway),
        new("roundOutAt", "Round-out begins", "m", 0, Runway),
        new("float", "Round-out and float", "m", 0, Runway),
        new("touchdown", "Wheels touch", "m", 0, Runway),
        new("touchdownSpeed", "True airspeed there", "kt", 1, Runway),
        new("noseDown", "Nose down, brakes", "m", 0, Runway),
        new("stop", "Stop", "m", 0, Runway),
        new("time", "Time to the stop", "s", 0, Runway),
    ];

    /// <summary>The numbers of a side, by key; what has no answer is missing.</summary>
    public static IReadOnlyDictionary<string, double> Of(WhatIfSetting setting, LandingSetup landing, Configuration configuration, LandingResult? result)
    {
        var numbers = new Dictionary<string, double>();
        Air air = landing.Air;
        Airspeed stall = configuration.StallSpeed(air), reference = configuration.ReferenceSpeed(air, setting.Multiple(configuration.Flaps));
        Airspeed approach = Airspeed.FromTrue(landing.Technique.ThresholdSpeed, air);
        numbers["stall"] = stall.Calibrated.Knots;
        numbers["reference"] = reference.Calibrated.Knots;
        numbers["approach"] = approach.Calibrated.Knots;
        numbers["approachTrue"] = approach.True.Knots;
        Try("stallIndicated", () => configuration.Indicated(stall).Knots);
        Try("approachIndicated", () => configuration.Indicated(approach).Knots);
        if (Flight(setting, configuration, approach) is { } flight)
        {
            numbers["ground"] = flight.GroundSpeed(setting.Headwind).Knots;
            numbers["sinkOnPath"] = flight.SinkRate.FeetPerMinute;
            numbers["pitch"] = flight.PitchAttitude.Degrees;
        }
        Try("engine", () => configuration.EngineSpeedOnPathOverGround(approach, setting.Path, setting.Headwind)?.RevolutionsPerMinute);
        Try("glide", () => -configuration.GlideIdling(approach)?.AngleOverGround(setting.Headwind).Degrees);
        if (numbers.TryGetValue("glide", out double glide)) numbers["glideRatio"] = 1 / Math.Tan(double.DegreesToRadians(glide));
        if (result is null) return numbers;
        numbers["roundOut"] = result.FlareHeight.Feet;
        numbers["roundOutAt"] = result.FlareStartDistance.Meters;
        numbers["float"] = result.Float.Meters;
        numbers["touchdown"] = result.TouchdownDistance.Meters;
        numbers["touchdownSpeed"] = result.TouchdownAirspeed.Knots;
        numbers["noseDown"] = result.NoseLowerDistance.Meters;
        numbers["stop"] = result.StopDistance.Meters;
        numbers["time"] = result.StopTime.Seconds;
        return numbers;

        void Try(string key, Func<double?> value)
        {
            try
            {
                if (value() is { } number) numbers[key] = number;
            }
            catch (RefusedInputException)
            {
                // The table says "none": what it means for the landing, the landing's own refusal says.
            }
        }
    }

    /// <summary>The steady flight down the path; none where there is none.</summary>
    public static SteadyFlight? Flight(WhatIfSetting setting, Configuration configuration, Airspeed approach)
    {
        try
        {
            return configuration.OnPathOverGround(approach, setting.Path, setting.Headwind);
        }
        catch (RefusedInputException)
        {
            return null;
        }
    }
}
