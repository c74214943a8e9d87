namespace FlapAero;

/// <summary>
/// Landings of the invented aeroplanes at their maximum mass by the usual pilot, on a dry, level, paved runway at standard sea level in a
/// calm: with flaps and without, so that only the flaps differ.
/// </summary>
public static class DemoLandings
{
    /// <summary>Trainer H4, full flaps.</summary>
    public static LandingSetup TrainerH4FullFlaps => Full(DemoAeroplanes.TrainerH4);

    /// <summary>Trainer H4, flaps up.</summary>
    public static LandingSetup TrainerH4FlapsUp => Up(DemoAeroplanes.TrainerH4);

    /// <summary>Trainer L2, full flaps.</summary>
    public static LandingSetup TrainerL2FullFlaps => Full(DemoAeroplanes.TrainerL2);

    /// <summary>Trainer L2, flaps up.</summary>
    public static LandingSetup TrainerL2FlapsUp => Up(DemoAeroplanes.TrainerL2);

    private static LandingSetup Full(Aeroplane aeroplane) => LandingSetup.For(aeroplane.Configure(aeroplane.FullFlaps));

    private static LandingSetup Up(Aeroplane aeroplane) => LandingSetup.For(aeroplane.Configure(aeroplane.FlapsUp));
}
