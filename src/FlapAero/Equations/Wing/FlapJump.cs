namespace FlapAero.Equations;

/// <summary>
/// The circulation whose own induced angle is exactly one inside a flap's span, and zero outside: what turns a jump of the
/// zero-lift angle into a smooth right-hand side, so that the Fourier series never has to draw a step (no Gibbs ripple).
/// With Σ n A_n sin nθ/sin θ = χ(θ), n A_n = s_n = (2/π) ∫ χ sin φ sin nφ dφ, and the sum has a closed form.
/// Stations θ, y = (b/2) cos θ; both wings carry the flap. Our own working of the equation of [glauert].
/// </summary>
/// <param name="from">Inboard end, as a share of the half span; 0 is the centreline.</param>
/// <param name="to">Outboard end, as a share of the half span; 1 is the tip.</param>
internal sealed class FlapJump(double from, double to)
{
    private readonly double _outer = Math.Acos(to);
    private readonly double _inner = Math.Acos(from);

    /// <summary>s_n for odd n; even ones are zero, as both wings carry the flap.</summary>
    public double Coefficient(int n) => 4 / Math.PI * (SineProduct(_inner, n) - SineProduct(_outer, n));

    /// <summary>
    /// G(θ) = Σ (s_n/n) sin nθ, summed exactly: finite everywhere, with a vertical tangent at the flap's ends.
    /// </summary>
    public double Circulation(double station)
    {
        double near = Antiderivative(station, _inner) - Antiderivative(station, _outer);
        double far = Antiderivative(station, Math.PI - _outer) - Antiderivative(station, Math.PI - _inner);
        return 2 / Math.PI * (near + far);
    }

    // ∫ sin φ sin nφ dφ from zero.
    private static double SineProduct(double angle, int n) =>
        n == 1
            ? angle / 2 - Math.Sin(2 * angle) / 4
            : Math.Sin((n - 1) * angle) / (2 * (n - 1)) - Math.Sin((n + 1) * angle) / (2 * (n + 1));

    // ∫ sin φ ½ ln|sin ½(θ+φ)/sin ½(θ−φ)| dφ; its first term tends to zero where φ reaches θ.
    private static double Antiderivative(double station, double angle)
    {
        double smooth = angle * Math.Sin(station) / 2;
        double apart = Math.Abs(Math.Sin((station - angle) / 2));
        double together = Math.Abs(Math.Sin((station + angle) / 2));
        if (apart < 1e-15 || together < 1e-15) return smooth;
        return smooth + (Math.Cos(station) - Math.Cos(angle)) / 2 * Math.Log(together / apart);
    }
}
