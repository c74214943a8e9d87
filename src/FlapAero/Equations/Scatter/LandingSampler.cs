using System.Runtime.InteropServices;

namespace FlapAero.Equations;

/// <summary>
/// Draws landings. Inputs are independent, but two of them may go together: a Gaussian copula, whose correlation is that of the
/// normals behind the two. Where both inputs are normals they are a bivariate normal with that correlation.
/// </summary>
internal sealed class LandingSampler
{
    private readonly LandingInput _center;
    private readonly GustInput _centerGust;
    private readonly (int Column, DistributionLaw Law)[] _varied;
    private readonly DistributionLaw _leaderLaw;
    private readonly int _leader = -1;
    private readonly int _follower = -1;
    private readonly double _correlation;

    /// <summary>A sampler of 24 laws, in the order of <see cref="LandingColumns.Inputs"/>, and 3 more where a gust may blow.</summary>
    /// <param name="laws">One for each input, and for each number of <see cref="GustInput"/>.</param>
    /// <param name="leader">An input's column; the follower's own number is mixed with the leader's.</param>
    /// <param name="follower">Another input's column.</param>
    /// <param name="correlation">Of the two; 0 leaves them independent.</param>
    public LandingSampler(ReadOnlySpan<DistributionLaw> laws, int leader = 0, int follower = 1, double correlation = 0)
    {
        Span<double> row = stackalloc double[LandingColumns.InputCount + GustInput.Count];
        GustInput gust = GustInput.None;
        GustInput.Row(ref gust).CopyTo(row[LandingColumns.InputCount..]);
        List<(int, DistributionLaw)> varied = [];
        for (int i = 0; i < laws.Length; i++)
        {
            if (laws[i].IsFixed)
                row[i] = laws[i].Minimum;
            else
                varied.Add((i, laws[i]));
        }

        _center = LandingInput.FromRow(row[..LandingColumns.InputCount]);
        row[LandingColumns.InputCount..].CopyTo(GustInput.Row(ref gust));
        _centerGust = gust;
        _varied = [.. varied];
        if (correlation != 0 && !laws[leader].IsFixed && !laws[follower].IsFixed)
            (_leader, _follower, _correlation, _leaderLaw) = (leader, follower, correlation, laws[leader]);
    }

    /// <summary>The inputs that vary, in groups of columns that are independent of each other: one, or the two that go together.</summary>
    public IReadOnlyList<IReadOnlyList<int>> Factors =>
    [
        .. _varied.Where(varied => varied.Column != _follower)
            .Select(varied => varied.Column == _leader ? (IReadOnlyList<int>)[_leader, _follower] : [varied.Column]),
    ];

    /// <summary>One landing from the numbers of its stream.</summary>
    public void Draw<TUniforms>(TUniforms uniforms, out LandingInput landing)
        where TUniforms : struct, IUniforms => Draw(uniforms, out landing, out _);

    /// <summary>One landing from the numbers of its stream, and the gust that it meets.</summary>
    public void Draw<TUniforms>(TUniforms uniforms, out LandingInput landing, out GustInput gust)
        where TUniforms : struct, IUniforms
    {
        landing = _center;
        gust = _centerGust;
        Span<double> row = MemoryMarshal.Cast<LandingInput, double>(new Span<LandingInput>(ref landing));
        Span<double> gustRow = GustInput.Row(ref gust);
        foreach ((int column, DistributionLaw law) in _varied)
        {
            double p = uniforms[column];
            if (column == _follower)
                p = Together(uniforms[_leader], p);
            double value = law.Quantile(p);
            if (column < row.Length)
                row[column] = value;
            else
                gustRow[column - row.Length] = value;
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
