namespace FlapAero;

/// <summary>
/// The inputs of a landing, each of which may vary in a scatter: the canonical landing's, and a gust on top of its
/// steady wind. Thread-safe: a plain value. The default is <see cref="Mass"/>. Coefficients are plain numbers, the others quantities.
/// </summary>
public enum LandingVariable
{
    /// <summary>Mass m.</summary>
    Mass = 0,

    /// <summary>Wing area S.</summary>
    WingArea,

    /// <summary>Span b, a length.</summary>
    Span,

    /// <summary>Height of the wing with the wheels on the ground.</summary>
    WingHeight,

    /// <summary>C_D0 with flap and gear.</summary>
    ZeroLiftDragCoefficient,

    /// <summary>Oswald factor e.</summary>
    OswaldFactor,

    /// <summary>C_Lmax.</summary>
    MaximumLiftCoefficient,

    /// <summary>Density of the air ρ.</summary>
    Density,

    /// <summary>Steady headwind w; a tailwind is negative.</summary>
    Headwind,

    /// <summary>Wheel height at the threshold h_t.</summary>
    ThresholdHeight,

    /// <summary>True airspeed at the threshold V_t.</summary>
    ThresholdSpeed,

    /// <summary>Angle of the approach path over the ground γ_p, positive down.</summary>
    PathAngle,

    /// <summary>Time constant of the round-out τ: a long one is a gentle, early round-out.</summary>
    FlareTimeConstant,

    /// <summary>Wheel height of the hold-off h_h.</summary>
    HoldOffHeight,

    /// <summary>Share f of C_Lmax at which the pilot lets the aeroplane settle.</summary>
    TouchdownLiftFraction,

    /// <summary>Wheel height at which the power begins to come off h_c.</summary>
    PowerCutHeight,

    /// <summary>Time that the throttle takes to close t_c.</summary>
    PowerCutTime,

    /// <summary>Idle thrust at rest T_0.</summary>
    IdleThrust,

    /// <summary>Lift coefficient of the roll with the nose held off C_Lg1.</summary>
    NoseHighLiftCoefficient,

    /// <summary>Share f_n of the touchdown speed at which the nose comes down.</summary>
    NoseLowerSpeedFraction,

    /// <summary>Lift coefficient of the roll on all wheels C_Lg2.</summary>
    LevelLiftCoefficient,

    /// <summary>Friction coefficient of rolling wheels μ_r.</summary>
    RollingFriction,

    /// <summary>Friction coefficient under braking μ_b.</summary>
    BrakingFriction,

    /// <summary>The runway's slope tan ε, positive uphill.</summary>
    RunwaySlope,

    /// <summary>Largest change Δw of the headwind in a 1-cosine gust, to 60 kt either way; negative in a lull, zero where none blows.</summary>
    GustChange,

    /// <summary>When the gust begins, counted from the threshold: its phase. A negative one has begun before.</summary>
    GustStart,

    /// <summary>How long the gust lasts λ, 0.2 s to an hour.</summary>
    GustLength,

    /// <summary>How the idle thrust changes with airspeed T_1, a plain number in N s/m; zero where it does not.</summary>
    IdleThrustSlope,

    /// <summary>How that changes with airspeed T_2, a plain number in N s²/m²; zero where it does not.</summary>
    IdleThrustCurvature,

    /// <summary>What a forward slip adds to C_D on the approach, until the round-out begins; zero where none is flown.</summary>
    SlipDragCoefficient,
}
