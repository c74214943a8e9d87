using UnitsNet;

namespace FlapAero;

/// <summary>The speeds of one flap setting on the day. Immutable.</summary>
public sealed class BriefedSpeeds
{
    internal BriefedSpeeds(Configuration configuration, Air air, Speed additive, double multiple)
    {
        Configuration = configuration;
        Multiple = multiple;
        Stall = configuration.StallSpeed(air);
        StallIndicated = configuration.Indicated(Stall);
        Reference = configuration.ReferenceSpeed(air, multiple);
        ReferenceIndicated = configuration.Indicated(Reference);
        Approach = Airspeed.FromCalibrated(Reference.Calibrated + additive, air);
        ApproachIndicated = configuration.Indicated(Approach);
    }

    /// <summary>Aeroplane, flap and mass.</summary>
    public Configuration Configuration { get; }

    /// <summary>V_S at 1 g.</summary>
    public Airspeed Stall { get; }

    /// <summary>The same on the needle.</summary>
    public Speed StallIndicated { get; }

    /// <summary>V_REF over V_S: 1.3 where no school has another.</summary>
    public double Multiple { get; }

    /// <summary>V_REF, the multiple of V_S in calibrated airspeed.</summary>
    public Airspeed Reference { get; }

    /// <summary>The same on the needle.</summary>
    public Speed ReferenceIndicated { get; }

    /// <summary>V_REF with the gust additive, added in calibrated airspeed.</summary>
    public Airspeed Approach { get; }

    /// <summary>The same on the needle: what the pilot flies on final.</summary>
    public Speed ApproachIndicated { get; }
}
