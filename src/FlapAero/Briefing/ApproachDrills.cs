using UnitsNet;

namespace FlapAero;

/// <summary>Too fast on final, in numbers: what the speed is worth, what the closed throttle needs, what the runway pays. Immutable.</summary>
public sealed class TooFastDrill
{
    internal TooFastDrill(
        Length worthInHeight, Length finalNeeded, Duration timeNeeded, LandingResult landing, Length further, Speed? mostOverThreshold) =>
        (WorthInHeight, FinalNeeded, TimeNeeded, TouchdownDistance, TouchdownFurther, MostOverThreshold) =
            (worthInHeight, finalNeeded, timeNeeded, landing.TouchdownDistance, further, mostOverThreshold);

    /// <summary>Energy height of the excess.</summary>
    public Length WorthInHeight { get; }

    /// <summary>Final over the ground, on the path with the throttle closed, until the briefed speed is back.</summary>
    public Length FinalNeeded { get; }

    /// <summary>How long that takes.</summary>
    public Duration TimeNeeded { get; }

    /// <summary>Where the wheels touch if the excess crosses the threshold.</summary>
    public Length TouchdownDistance { get; }

    /// <summary>How much further along that is.</summary>
    public Length TouchdownFurther { get; }

    /// <summary>The most too fast over the threshold, in whole knots, that still touches within the first third; none where not even the briefed speed does.</summary>
    public Speed? MostOverThreshold { get; }
}

/// <summary>Too slow on final, in numbers. Immutable.</summary>
public sealed class TooSlowDrill
{
    internal TooSlowDrill(double margin, double marginInLull, RotationalSpeed engineSpeed, Duration? timeAtFullThrottle, Length heightForTheNose) =>
        (Margin, MarginInLull, EngineSpeed, TimeAtFullThrottle, HeightForTheNose) = (margin, marginInLull, engineSpeed, timeAtFullThrottle, heightForTheNose);

    /// <summary>What is left over the stall, as a share of the stalling speed.</summary>
    public double Margin { get; }

    /// <summary>The same in a lull as deep as the day's gust factor.</summary>
    public double MarginInLull { get; }

    /// <summary>What holds the path at this speed.</summary>
    public RotationalSpeed EngineSpeed { get; }

    /// <summary>How long full throttle takes on the path to bring the speed back; none where it does not, or where the file gives no full throttle.</summary>
    public Duration? TimeAtFullThrottle { get; }

    /// <summary>What the nose alone would pay for the speed, in height.</summary>
    public Length HeightForTheNose { get; }
}

/// <summary>Too high on final, in numbers. Immutable.</summary>
public sealed class TooHighDrill
{
    internal TooHighDrill(Length finalNeeded, Duration timeNeeded, Length mostFromGate, Length further, (Angle Least, Angle Most) slip) =>
        (FinalNeeded, TimeNeeded, MostFromGate, TouchdownFurther, SlipLeast, SlipMost) = (finalNeeded, timeNeeded, mostFromGate, further, slip.Least, slip.Most);

    /// <summary>Final over the ground with the throttle closed and the speed held until the path is met.</summary>
    public Length FinalNeeded { get; }

    /// <summary>How long that takes.</summary>
    public Duration TimeNeeded { get; }

    /// <summary>The most that the closed throttle takes off between the height to be stable by and the threshold.</summary>
    public Length MostFromGate { get; }

    /// <summary>How much further along the wheels touch if the excess crosses the threshold.</summary>
    public Length TouchdownFurther { get; }

    /// <summary>What a forward slip adds to the angle at the least.</summary>
    public Angle SlipLeast { get; }

    /// <summary>What it adds at the most.</summary>
    public Angle SlipMost { get; }
}

/// <summary>Too low on final, in numbers. Immutable.</summary>
public sealed class TooLowDrill
{
    internal TooLowDrill(Length levelFor, Duration timeLevel, RotationalSpeed engineSpeed, Speed paidByTheNose, double marginLeft) =>
        (LevelFor, TimeLevel, EngineSpeed, PaidByTheNose, MarginLeft) = (levelFor, timeLevel, engineSpeed, paidByTheNose, marginLeft);

    /// <summary>How far level flight is held over the ground until the path comes down to meet it.</summary>
    public Length LevelFor { get; }

    /// <summary>How long that takes.</summary>
    public Duration TimeLevel { get; }

    /// <summary>What holds level flight at the briefed speed.</summary>
    public RotationalSpeed EngineSpeed { get; }

    /// <summary>The airspeed that the nose alone would pay for the height.</summary>
    public Speed PaidByTheNose { get; }

    /// <summary>What is left over the stall then, as a share of the stalling speed.</summary>
    public double MarginLeft { get; }
}
