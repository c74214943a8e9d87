using UnitsNet;

namespace FlapAero;

/// <summary>A flight to brief with the invented Trainer H4, on an invented runway.</summary>
public static class DemoBriefings
{
    /// <summary>Trainer H4 at 1 050 kg, runway 24 with 900 m of short dry grass 450 ft above the sea, 22 °C, QNH 1 018 hPa, wind 210° 12 kt with gusts of 20 kt.</summary>
    public static BriefingRequest Flight
    {
        get
        {
            Length elevation = Length.FromFeet(450);
            return new(
                DemoAeroplanes.TrainerH4,
                Mass.FromKilograms(1050),
                new()
                {
                    Name = "24",
                    Direction = Angle.FromDegrees(240),
                    LengthAvailable = Length.FromMeters(900),
                    Surface = RunwaySurface.FirmGrass,
                    Elevation = elevation,
                },
                Air.AtTemperature(Air.PressureAltitudeOf(elevation, Pressure.FromHectopascals(1018)), Temperature.FromDegreesCelsius(22)),
                new(new(Angle.FromDegrees(210), Speed.FromKnots(12)), Speed.FromKnots(20)));
        }
    }
}
