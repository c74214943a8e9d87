using MathNet.Numerics.LinearAlgebra;
using MathNet.Numerics.LinearAlgebra.Double;

namespace FlapAero.Equations;

/// <summary>
/// Prandtl's lifting line as a Fourier series of odd terms, Γ = 2bV Σ A_n sin nθ, collocated at θ_i = (2i − 1)π/4N: Σ A_n
/// sin nθ (nμ + sin θ) + the image's part = μ α sin θ, μ = a₀c/4b. Everything is linear in the angle of attack: one solution
/// for a degree of it (<see cref="PerAngle"/>) and one for twist and flap (<see cref="Fixed"/>). Source: [glauert].
/// </summary>
internal sealed class LiftingLineSystem
{
    // s_n²/n falls with n³: what is cut off is below 1e-8 of the flap's own drag.
    private const int FlapTerms = 4000;

    private readonly SpanShape _shape;
    private readonly FlapJump? _flap;
    private readonly double _flapAngle;
    private readonly GroundImage? _image;
    private readonly int _terms;
    private readonly double[] _flapCoefficients;
    private readonly double _flapOwnDrag;

    /// <param name="shape">The wing.</param>
    /// <param name="flap">Where the zero-lift angle jumps.</param>
    /// <param name="flapAngle">By how much the flap turns the sections' zero-lift line up, rad: −Δα₀.</param>
    /// <param name="image">The ground, where there is one.</param>
    /// <param name="terms">N, the number of odd terms.</param>
    public LiftingLineSystem(SpanShape shape, FlapJump? flap, double flapAngle, GroundImage? image, int terms)
    {
        (_shape, _flap, _flapAngle, _image, _terms) = (shape, flap, flapAngle, image, terms);
        _flapCoefficients = flap is null ? [] : [.. Enumerable.Range(0, FlapTerms).Select(i => flap.Coefficient(2 * i + 1))];
        _flapOwnDrag = _flapCoefficients.Select((coefficient, i) => coefficient * coefficient / (2 * i + 1)).Sum();
        (PerAngle, Fixed) = Solve();
        (DragPerAngle, DragMixed, DragFixed) = Drags();
    }

    /// <summary>Coefficients of the solution for an angle of attack of one radian, without twist and flap.</summary>
    public double[] PerAngle { get; }

    /// <summary>Coefficients for twist and flap at no angle of attack; the flap's own closed form not among them.</summary>
    public double[] Fixed { get; }

    /// <summary>dC_L/dα = πA A₁.</summary>
    public double Slope => Math.PI * _shape.AspectRatio * PerAngle[0];

    /// <summary>C_L at no angle of attack.</summary>
    public double LiftAtZero =>
        Math.PI * _shape.AspectRatio * (Fixed[0] + (_flap is null ? 0 : _flapAngle * _flapCoefficients[0]));

    /// <summary>C_Di = α² of these, and 2α and 1 of the next two.</summary>
    public double DragPerAngle { get; }

    /// <summary>What angle of attack and twist or flap induce on each other.</summary>
    public double DragMixed { get; }

    /// <summary>C_Di at no angle of attack.</summary>
    public double DragFixed { get; }

    /// <summary>G(θ) = Γ/2bV for an angle of attack of one radian.</summary>
    public double CirculationPerAngle(double station) => SineSum(PerAngle, station);

    /// <summary>G(θ) from twist and flap, the flap's jump summed exactly.</summary>
    public double CirculationFixed(double station) =>
        SineSum(Fixed, station) + (_flap is null ? 0 : _flapAngle * _flap.Circulation(station));

    private static double SineSum(double[] coefficients, double station) =>
        coefficients.Select((coefficient, i) => coefficient * Math.Sin((2 * i + 1) * station)).Sum();

    private (double[] PerAngle, double[] Fixed) Solve()
    {
        Matrix<double> matrix = DenseMatrix.Create(_terms, _terms, 0);
        Matrix<double> right = DenseMatrix.Create(_terms, 2, 0);
        for (int row = 0; row < _terms; row++)
        {
            double station = (2 * row + 1) * Math.PI / (4 * _terms);
            (double sine, double share) = (Math.Sin(station), Math.Cos(station));
            double mu = _shape.SectionSlope(share) * _shape.ChordOverSpan(share) / 4;
            double[] influence = Influence(station);
            for (int column = 0; column < _terms; column++)
            {
                int n = 2 * column + 1;
                double image = _image is null ? 0 : mu * sine * n * influence[column];
                matrix[row, column] = Math.Sin(n * station) * (n * mu + sine) - image;
            }

            right[row, 0] = mu * sine;
            right[row, 1] = mu * sine * _shape.AerodynamicTwist(share);
            if (_flap is not null)
                right[row, 1] -= _flapAngle * sine * (_flap.Circulation(station) - mu * FlapImage(influence));
        }

        Matrix<double> solved = matrix.LU().Solve(right);
        return (solved.Column(0).ToArray(), solved.Column(1).ToArray());
    }

    private (double PerAngle, double Mixed, double Fixed) Drags()
    {
        double between = 0, own = 0, mixed = 0;
        for (int i = 0; i < _terms; i++)
        {
            int n = 2 * i + 1;
            double flap = _flap is null ? 0 : _flapAngle * _flapCoefficients[i];
            own += n * PerAngle[i] * PerAngle[i];
            mixed += n * PerAngle[i] * Fixed[i] + PerAngle[i] * flap;
            between += n * Fixed[i] * Fixed[i] + 2 * Fixed[i] * flap;
        }

        between += _flapAngle * _flapAngle * _flapOwnDrag;
        (double ownImage, double mixedImage, double betweenImage) = ImageDrags();
        double scale = Math.PI * _shape.AspectRatio;
        return (scale * (own - ownImage), scale * (mixed - mixedImage), scale * (between - betweenImage));
    }

    // (2/π) ∫ G w sin θ dθ over the span by the midpoint rule, which is exact to round-off for what is smooth and periodic.
    private (double PerAngle, double Mixed, double Fixed) ImageDrags()
    {
        if (_image is null) return (0, 0, 0);
        int points = 4 * _terms;
        double own = 0, mixed = 0, between = 0;
        for (int i = 0; i < points; i++)
        {
            double station = (i + 0.5) * Math.PI / (2 * points);
            double[] influence = Influence(station);
            double perAngle = CirculationPerAngle(station) * Math.Sin(station);
            double rest = CirculationFixed(station) * Math.Sin(station);
            double washPerAngle = Wash(PerAngle, influence);
            double washRest = Wash(Fixed, influence) + (_flap is null ? 0 : _flapAngle * FlapImage(influence));
            own += perAngle * washPerAngle;
            // Equal by reciprocity; their mean loses what the quadrature leaves of a difference.
            mixed += (perAngle * washRest + rest * washPerAngle) / 2;
            between += rest * washRest;
        }

        double weight = 2.0 / points;
        return (own * weight, mixed * weight, between * weight);
    }

    // The image's part of the induced angle takes the minus of these.
    private static double Wash(double[] coefficients, double[] influence) =>
        coefficients.Select((coefficient, i) => (2 * i + 1) * coefficient * influence[i]).Sum();

    private double FlapImage(double[] influence)
    {
        double sum = 0;
        for (int i = 0; i < influence.Length; i++) sum += _flapCoefficients[i] * influence[i];
        return sum;
    }

    private double[] Influence(double station) =>
        _image is null ? [] : _image.Influence(station, _flap is null ? _terms : Math.Max(_terms, FlapTerms / 4));
}
