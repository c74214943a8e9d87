using FlapAero.Equations;

namespace FlapAero.Tests;

/// <summary>The landing's forces as a textbook prints them, for one aeroplane; nothing is taken from the equations but g.</summary>
internal sealed class Textbook(LandingInput input)
{
    public double Weight => input.Mass * StandardConstants.Gravity;

    public double Dynamic(double speed) => 0.5 * input.Density * speed * speed * input.WingArea;

    /// <summary>C_D0 + k_g C_L²/(πAe), k_g = 1 − exp(−2.48 (2z/b)^0.768).</summary>
    public double Drag(double speed, double lift, double wing)
    {
        double near = 1 - Math.Exp(-2.48 * Math.Pow(2 * wing / input.Span, 0.768));
        double aspectRatio = input.Span * input.Span / input.WingArea;
        return Dynamic(speed) * (input.ZeroLiftDrag + near * lift * lift / (Math.PI * aspectRatio * input.Oswald));
    }

    /// <summary>V̇ = (T − D)/m − g sin γ with a lift in newtons.</summary>
    public double Acceleration(double speed, double wing, double thrust, double sink, double lift) =>
        (thrust - Drag(speed, lift / Dynamic(speed), wing)) / input.Mass + StandardConstants.Gravity * sink / speed;

    /// <summary>L = W cos γ + m ḧ.</summary>
    public double Lift(double speed, double sink, double upward = 0) =>
        Weight * Math.Sqrt(1 - sink / speed * (sink / speed)) + input.Mass * upward;

    /// <summary>V̇ = (T − D − μ F_N − W sin ε)/m, D against the air.</summary>
    public double OnWheels(double speed, double thrust, double lift, double friction)
    {
        double angle = Math.Atan(input.RunwaySlope);
        double load = Math.Max(0, Weight * Math.Cos(angle) - Dynamic(speed) * lift);
        return (thrust - Math.Sign(speed) * Drag(speed, lift, input.WingHeight) - friction * load - Weight * Math.Sin(angle)) / input.Mass;
    }
}
