using UnitsNet;

namespace FlapAero;

/// <summary>A propeller at one airspeed and engine speed. Immutable.</summary>
public sealed class PropellerState
{
    internal PropellerState(double advanceRatio, double revolutions, double thrust, double power, double torque, double? efficiency)
    {
        Efficiency = efficiency;
        AdvanceRatio = advanceRatio;
        EngineSpeed = RotationalSpeed.FromRevolutionsPerMinute(revolutions * 60);
        Thrust = Force.FromNewtons(thrust);
        Power = Power.FromWatts(power);
        Torque = Torque.FromNewtonMeters(torque);
    }

    /// <summary>J.</summary>
    public double AdvanceRatio { get; }

    /// <summary>N; the propeller sits on the crankshaft.</summary>
    public RotationalSpeed EngineSpeed { get; }

    /// <summary>T, negative where the propeller brakes.</summary>
    public Force Thrust { get; }

    /// <summary>P that the engine gives, negative where the propeller drives it.</summary>
    public Power Power { get; }

    /// <summary>Q = P/2πN.</summary>
    public Torque Torque { get; }

    /// <summary>η = J C_T/C_P, or no answer where the propeller neither pulls nor takes power.</summary>
    public double? Efficiency { get; }
}
