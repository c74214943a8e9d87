using System.Runtime.CompilerServices;

namespace FlapAero.Equations;

/// <summary>
/// Draws landings. Inputs are independent, but two of them may go together: a Gaussian copula, whose correlation is that of the
/// normals behind the two. Where both inputs are normals they are a bivariate normal with that correlation.
/// </summary>
internal sealed class LandingSampler
{
    private readonly LandingInput _center;
    private readonly (int Column, DistributionLaw Law)[] _varied;
    private readonly int _leader = -1;
    private readonly int _follower = -1;
    private readonly double _correlation;

    /// <summary>A sampler of one law for each input, in the order of <see cref="LandingVariable"/>.</summary>
    /// <param name="laws">The laws.</param>
    /// <param name="leader">An input's column; the follower's own number is mixed with the leader's.</param>
    /// <param name="follower">Another input's column.</param>
    /// <param name="correlation">Of the two; 0 leaves them independent.</param>
    public LandingSampler(ReadOnlySpan<DistributionLaw> laws, int leader = 0, int follower = 1, double correlation = 0)
    {
        Span<double> row = stackalloc double[LandingInput.Count];
        List<(int, DistributionLaw)> varied = [];
        for (int i = 0; i < laws.Length; i++)
        {
            if (laws[i].IsFixed)
                row[i] = laws[i].Minimum;
            else
                varied.Add((i, laws[i]));
        }

        _center = LandingInput.FromRow(row);
        _varied = [.. varied];
        if (correlation != 0 && !laws[leader].IsFixed && !laws[follower].IsFixed)
            (_leader, _follower, _correlation) = (leader, follower, correlation);
    }

    /// <summary>The inputs that vary, in groups of columns that are independent of each other: one, or the two that go together.</summary>
    public IReadOnlyList<IReadOnlyList<int>> Factors =>
    [
        .. _varied.Where(varied => varied.Column != _follower)
            .Select(varied => varied.Column == _leader ? (IReadOnlyList<int>)[_leader, _follower] : [varied.Column]),
    ];

    /// <summary>One landing from the numbers of its stream.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public void Draw<TUniforms>(TUniforms uniforms, out LandingInput landing)
        where TUniforms : struct, IUniforms
    {
        landing = _center;
        Span<double> row = LandingInput.Row(ref landing);
        foreach ((int column, DistributionLaw law) in _varied)
        {
            double p = uniforms[column];
            row[column] = law.Quantile(column == _follower ? Together(uniforms[_leader], p) : p);
        }
    }

    private double Together(double leader, double own)
    {
        double mixed = _correlation * StandardNormal.Quantile(leader)
            + Math.Sqrt((1 - _correlation) * (1 + _correlation)) * StandardNormal.Quantile(own);
        // Past eight deviations the probability rounds to one, where a normal has no quantile.
        return Math.Clamp(StandardNormal.Cdf(mixed), double.Epsilon, 1 - 1.0 / (1UL << 53));
    }
}
