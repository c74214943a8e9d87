namespace FlapAero.Equations;

/// <summary>Height and speed as one store. Source: [anderson-itf].</summary>
internal static class EnergyLaws
{
    /// <summary>h_e = h + V²/2g.</summary>
    public static double Height(double height, double speed) => height + speed * speed / (2 * StandardConstants.Gravity);

    /// <summary>dh_e/dt = (T − D) V/W.</summary>
    public static double Rate(double thrust, double drag, double speed, double weight) => (thrust - drag) * speed / weight;

    /// <summary>Δh_e of a speed that is off by ΔV: (V ΔV + ½ ΔV²)/g.</summary>
    public static double OfSpeed(double speed, double excess) => excess * (speed + 0.5 * excess) / StandardConstants.Gravity;

    /// <summary>ΔV that a height is worth: √(V² + 2gΔh) − V, without its cancellation; NaN where the speed would be imaginary.</summary>
    public static double InSpeed(double speed, double height)
    {
        double change = 2 * StandardConstants.Gravity * height;
        return change / (Math.Sqrt(speed * speed + change) + speed);
    }

    /// <summary>V of an energy of motion that is given as a height: √(2 g h).</summary>
    public static double Speed(double kinetic) => Math.Sqrt(2 * StandardConstants.Gravity * kinetic);

    /// <summary>d(V²/2g)/ds on a straight path: thrust beyond what holds the path, (T − D)/W − sin γ.</summary>
    public static double PerPath(double thrust, double thrustOnPath, double weight) => (thrust - thrustOnPath) / weight;
}
