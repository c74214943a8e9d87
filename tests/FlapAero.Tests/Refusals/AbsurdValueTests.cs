using System.Reflection;
using System.Runtime.CompilerServices;
using UnitsNet;

namespace FlapAero.Tests.Refusals;

/// <summary>Every public member that takes a quantity or a number, given an absurd one: an answer, or a refusal of the one kind.</summary>
public sealed class AbsurdValueTests
{
    private static readonly Dictionary<string, (MethodBase Method, ParameterInfo Parameter)> ById = typeof(Air).Assembly.GetExportedTypes()
        .Where(type => !type.IsAbstract || type.IsSealed)
        .SelectMany(type => type.GetMembers(BindingFlags.Public | BindingFlags.Static | BindingFlags.Instance | BindingFlags.DeclaredOnly))
        .OfType<MethodBase>()
        .Where(method => !method.IsDefined(typeof(CompilerGeneratedAttribute)) && !method.IsSpecialName || method is ConstructorInfo)
        .SelectMany(method => method.GetParameters().Where(IsValue).Select(parameter => (Method: method, Parameter: parameter)))
        .ToDictionary(pair => Id(pair.Method, pair.Parameter));

    public static TheoryData<string> Parameters => [.. ById.Keys];

    [Fact]
    public void Library_ParametersThatAreValues_AreFound() => Assert.True(ById.Count > 150, $"{ById.Count}");

    [Theory, MemberData(nameof(Parameters))]
    public void Member_AbsurdValue_IsTakenOrRefusedInFields(string id)
    {
        (MethodBase method, ParameterInfo parameter) = ById[id];
        int refused = 0;
        foreach (object absurd in Absurd(Nullable.GetUnderlyingType(parameter.ParameterType) ?? parameter.ParameterType))
        {
            object?[] arguments = [.. method.GetParameters().Select(other => other == parameter ? absurd : Samples.Of(other))];
            Exception? error = Record.Exception(() => Call(method, arguments));
            if (error is null) continue;
            var refusal = Assert.IsType<RefusedInputException>(Assert.IsType<TargetInvocationException>(error).InnerException);
            RefusalFields.Check(refusal);
            refused++;
        }

        Assert.True(refused > 0 || TakesAnything.Contains(id), "None was refused.");
    }

    // What is kept and refused when a landing is flown, and what is put into words in the unit that it has.
    private static readonly string[] TakesAnything =
    [
        "noseHighLift of LandingAeroplaneFromConfiguration(Con Dou Dou For)", "levelLift of LandingAeroplaneFromConfiguration(Con Dou Dou For)",
        "idleThrust of LandingAeroplaneFromConfiguration(Con Dou Dou For)", "quantity of QuantityTextInOwnUnit(IQu Str)",
    ];

    private static string Id(MethodBase method, ParameterInfo parameter)
    {
        IEnumerable<string> types = method.GetParameters().Select(other => other.ParameterType.Name[..3]);
        return $"{parameter.Name} of {method.DeclaringType!.Name}{method.Name}({string.Join(' ', types)})";
    }

    private static object? Call(MethodBase method, object?[] arguments) => method is ConstructorInfo constructor
        ? constructor.Invoke(arguments)
        : method.Invoke(method.IsStatic ? null : Samples.Instance(method.DeclaringType!), arguments);

    private static bool IsValue(ParameterInfo parameter)
    {
        Type type = Nullable.GetUnderlyingType(parameter.ParameterType) ?? parameter.ParameterType;
        return type == typeof(double) || type == typeof(IQuantity) || (type.IsValueType && typeof(IQuantity).IsAssignableFrom(type));
    }

    private static IEnumerable<object> Absurd(Type type)
    {
        if (type == typeof(double))
            return [double.NaN, double.PositiveInfinity, double.NegativeInfinity, 1e308, -1e308, double.MaxValue];
        QuantityInfo kind = type == typeof(IQuantity) ? Speed.Info : Quantity.Infos.Single(info => info.ValueType == type);
        // What UnitsNet counts in decimals holds less.
        double most = type == typeof(Power) ? 1e27 : 1e308;
        return kind.UnitInfos.SelectMany(unit => new object?[] { Made(most, unit.Value), Made(-most, unit.Value) }).OfType<object>();
    }

    private static IQuantity? Made(double value, Enum unit)
    {
        try
        {
            return Quantity.From(value, unit);
        }
        catch (Exception e) when (e is ArgumentException or OverflowException)
        {
            // UnitsNet refuses this one itself.
            return null;
        }
    }
}
