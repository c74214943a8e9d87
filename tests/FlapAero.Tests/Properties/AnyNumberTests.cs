using System.Reflection;
using CsCheck;

namespace FlapAero.Tests.Properties;

/// <summary>Any numbers at all go in; a finite number or a refusal comes out.</summary>
public sealed class AnyNumberTests
{
    private const int Samples = 10000;
    private const int MostArguments = 4;

    private static readonly double[] Edges =
    [
        double.NaN, double.PositiveInfinity, double.NegativeInfinity, 0, -0.0, double.Epsilon, -double.Epsilon,
        double.MaxValue, double.MinValue, 1e300, -1e300, 1e-300, 1e16, -1e16,
    ];

    // Values of a size that a calculation may accept, edges, and anything that 64 bits can say.
    private static readonly Gen<double> Number = Gen.Frequency(
        (6, Gen.Double[0, 10]),
        (6, Gen.Double[0, 100]),
        (2, Gen.Double[0, 1]),
        (2, Gen.Double[-100, 2000]),
        (3, Gen.Int[0, Edges.Length - 1].Select(index => Edges[index])),
        (2, Gen.Double));

    private static readonly Type[] Covered =
    [
        typeof(Air), typeof(Airspeed), typeof(AirspeedCalibration), typeof(LiftCurve), typeof(DragPolar), typeof(GroundEffect),
        typeof(Gust), typeof(LoadFactor), typeof(Wind), typeof(WindProfile), typeof(Wing), typeof(FlapSetting), typeof(Aeroplane),
        typeof(Configuration), typeof(SteadyFlight), typeof(Battery), typeof(ElectricalLoad),
    ];

    public static TheoryData<string> Ids => [.. Calculations.ById.Keys];

    [Theory, MemberData(nameof(Ids))]
    public void Calculation_AnyNumbers_AnswersFinitelyOrRefuses(string id)
    {
        int answered = FiniteOrRefused.Sample(Number.Array[MostArguments], Samples, Calculations.ById[id]);
        Assert.True(answered > 0, $"{id} refused all of {Samples} samples.");
    }

    [Fact]
    public void Calculations_PublicOnesOfTheModel_AreAllThere()
    {
        IEnumerable<string> methods = Covered
            .SelectMany(type => type.GetMethods(
                BindingFlags.Public | BindingFlags.Static | BindingFlags.Instance | BindingFlags.DeclaredOnly))
            .Where(method => !method.IsSpecialName && method.GetParameters().Length > 0)
            .Select(method => $"{method.DeclaringType!.Name}.{method.Name}");
        Assert.Empty(methods.Distinct().Except(Calculations.ById.Keys));
    }
}
