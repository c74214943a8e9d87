using System.Runtime.CompilerServices;

namespace FlapAero.Equations;

/// <summary>
/// One step of Dormand and Prince's explicit Runge-Kutta method of order 8 with its two embedded error estimates of order 5 and 3
/// (E. Hairer, S. P. Nørsett, G. Wanner, Solving Ordinary Differential Equations I, 2nd ed., II.5 and II.10: the coefficients as SciPy
/// prints them). Ours because MathNet.Numerics has no method of this order, none with an error estimate, and none over vectors.
/// </summary>
internal static class Dop853
{
    public const int Order = 8;

    /// <summary>Nodes of a step: 12 of the method, the last of them at the step's end.</summary>
    public const int Nodes = 12;

    /// <summary>Where in the step the nodes lie.</summary>
    public static ReadOnlySpan<double> Places =>
    [
        0.0, 0.05260015195876773, 0.0789002279381516, 0.1183503419072274, 0.2816496580927726, 0.3333333333333333,
        0.25, 0.3076923076923077, 0.6512820512820513, 0.6, 0.8571428571428571, 1.0,
    ];

    /// <summary>
    /// Motion after the step and the two error estimates per unit of time, from the rates k1 at its start. Unrolled: the
    /// coefficients are constants of the code, and those that are zero cost nothing.
    /// </summary>
    [SkipLocalsInit]
    [MethodImpl(MethodImplOptions.NoInlining | MethodImplOptions.AggressiveOptimization)]
    public static TMotion Step<T, TMotion, TStage>(
        ref TStage law, T step, in TMotion y, in TMotion k1, out TMotion fifth, out TMotion third, out T distance)
        where T : unmanaged, ILanes<T>
        where TMotion : unmanaged, IMotion<TMotion, T>
        where TStage : struct, IStage<T, TMotion>
    {
        TMotion s2 = k1.Times(0.05260015195876773);
        TMotion k2 = law.Rates(1, y.Plus(step, s2));
        TMotion s3 = k1.Times(0.0197250569845379).Plus(0.0591751709536137, k2);
        TMotion k3 = law.Rates(2, y.Plus(step, s3));
        TMotion s4 = k1.Times(0.02958758547680685).Plus(0.08876275643042054, k3);
        TMotion k4 = law.Rates(3, y.Plus(step, s4));
        TMotion s5 = k1.Times(0.2413651341592667).Plus(-0.8845494793282861, k3).Plus(0.924834003261792, k4);
        TMotion k5 = law.Rates(4, y.Plus(step, s5));
        TMotion s6 = k1.Times(0.037037037037037035).Plus(0.17082860872947386, k4).Plus(0.12546768756682242, k5);
        TMotion k6 = law.Rates(5, y.Plus(step, s6));
        TMotion s7 = k1.Times(0.037109375).Plus(0.17025221101954405, k4).Plus(0.06021653898045596, k5).Plus(-0.017578125, k6);
        TMotion k7 = law.Rates(6, y.Plus(step, s7));
        TMotion s8 =
            k1.Times(0.03709200011850479).Plus(0.17038392571223998, k4).Plus(0.10726203044637328, k5)
                .Plus(-0.015319437748624402, k6).Plus(0.008273789163814023, k7);
        TMotion k8 = law.Rates(7, y.Plus(step, s8));
        TMotion s9 =
            k1.Times(0.6241109587160757).Plus(-3.3608926294469414, k4).Plus(-0.868219346841726, k5)
                .Plus(27.59209969944671, k6).Plus(20.154067550477894, k7).Plus(-43.48988418106996, k8);
        TMotion k9 = law.Rates(8, y.Plus(step, s9));
        TMotion s10 =
            k1.Times(0.47766253643826434).Plus(-2.4881146199716677, k4).Plus(-0.590290826836843, k5)
                .Plus(21.230051448181193, k6).Plus(15.279233632882423, k7).Plus(-33.28821096898486, k8)
                .Plus(-0.020331201708508627, k9);
        TMotion k10 = law.Rates(9, y.Plus(step, s10));
        TMotion s11 =
            k1.Times(-0.9371424300859873).Plus(5.186372428844064, k4).Plus(1.0914373489967295, k5)
                .Plus(-8.149787010746927, k6).Plus(-18.52006565999696, k7).Plus(22.739487099350505, k8)
                .Plus(2.4936055526796523, k9).Plus(-3.0467644718982196, k10);
        TMotion k11 = law.Rates(10, y.Plus(step, s11));
        TMotion s12 =
            k1.Times(2.273310147516538).Plus(-10.53449546673725, k4).Plus(-2.0008720582248625, k5)
                .Plus(-17.9589318631188, k6).Plus(27.94888452941996, k7).Plus(-2.8589982771350235, k8)
                .Plus(-8.87285693353063, k9).Plus(12.360567175794303, k10).Plus(0.6433927460157636, k11);
        TMotion k12 = law.Rates(11, y.Plus(step, s12));
        fifth =
            k1.Times(0.01312004499419488).Plus(-1.2251564463762044, k6).Plus(-0.4957589496572502, k7)
                .Plus(1.6643771824549864, k8).Plus(-0.35032884874997366, k9).Plus(0.3341791187130175, k10)
                .Plus(0.08192320648511571, k11).Plus(-0.022355307863886294, k12);
        TMotion mean =
            k1.Times(0.054293734116568765).Plus(4.450312892752409, k6).Plus(1.8915178993145003, k7)
                .Plus(-5.801203960010585, k8).Plus(0.3111643669578199, k9).Plus(-0.1521609496625161, k10)
                .Plus(0.20136540080403034, k11).Plus(0.04471061572777259, k12);
        third = mean.Plus(-0.244094488188976378, k1).Plus(-0.733846688281611857, k9).Plus(-0.0220588235294117647, k12);
        distance = step * (
            0.054293734116568765 * law.GroundSpeed(0) + 4.450312892752409 * law.GroundSpeed(5) + 1.8915178993145003 * law.GroundSpeed(6)
            + -5.801203960010585 * law.GroundSpeed(7) + 0.3111643669578199 * law.GroundSpeed(8) - 0.1521609496625161 * law.GroundSpeed(9)
            + 0.20136540080403034 * law.GroundSpeed(10) + 0.04471061572777259 * law.GroundSpeed(11));
        return y.Plus(step, mean);
    }
}
