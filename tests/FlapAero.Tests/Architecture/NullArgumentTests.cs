using System.Reflection;
using System.Runtime.CompilerServices;
using UnitsNet;
using UnitsNet.Units;

namespace FlapAero.Tests.Architecture;

/// <summary>Nothing in place of an argument that must be there is an error that names the argument, before any other is looked at.</summary>
public sealed class NullArgumentTests
{
    private static readonly NullabilityInfoContext Nullability = new();

    private static readonly Dictionary<string, (MethodBase Method, ParameterInfo Parameter)> ById = typeof(Air).Assembly.GetExportedTypes()
        .SelectMany(type => type.GetMembers(BindingFlags.Public | BindingFlags.Static | BindingFlags.Instance | BindingFlags.DeclaredOnly))
        .OfType<MethodBase>()
        .SelectMany(method => method.GetParameters().Where(Needed).Select(parameter => (Method: method, Parameter: parameter)))
        .ToDictionary(pair => $"{pair.Method.DeclaringType!.Name}.{pair.Method} {pair.Parameter.Name}");

    public static TheoryData<string> Arguments => [.. ById.Keys];

    [Fact]
    public void Library_ArgumentsThatMustBeThere_AreFound() => Assert.True(ById.Count > 100, $"{ById.Count}");

    [Theory, MemberData(nameof(Arguments))]
    public void Member_NullArgument_IsNamed(string id)
    {
        (MethodBase method, ParameterInfo parameter) = ById[id];
        object?[] arguments = [.. method.GetParameters().Select(other => other == parameter ? null : Any(other.ParameterType))];
        Exception? error = Record.Exception(() => method is ConstructorInfo constructor
            ? constructor.Invoke(arguments)
            : method.Invoke(method.IsStatic ? null : RuntimeHelpers.GetUninitializedObject(method.DeclaringType!), arguments));
        ArgumentNullException named = Assert.IsType<ArgumentNullException>(Assert.IsType<TargetInvocationException>(error).InnerException);
        Assert.Equal(parameter.Name, named.ParamName);
    }

    // Operators and the members that the compiler writes for a record take null as everybody's do.
    private static bool Needed(ParameterInfo parameter) =>
        !parameter.ParameterType.IsValueType && !parameter.ParameterType.IsByRef
        && (!parameter.Member.IsDefined(typeof(CompilerGeneratedAttribute)) || parameter.Member.Name.StartsWith("set_", StringComparison.Ordinal))
        && Nullability.Create(parameter).WriteState != NullabilityState.Nullable;

    /// <summary>Something of a type; not necessarily something that makes sense.</summary>
    private static object? Any(Type type)
    {
        if (type == typeof(string)) return "any";
        if (type == typeof(IQuantity)) return Length.FromMeters(1);
        if (type == typeof(Enum)) return LengthUnit.Meter;
        if (type.IsValueType) return Activator.CreateInstance(type);
        if (!type.IsInterface) return RuntimeHelpers.GetUninitializedObject(type);
        Type[] of = type.GetGenericArguments();
        return of.Length == 1 ? Array.CreateInstance(of[0], 0) : Activator.CreateInstance(typeof(Dictionary<,>).MakeGenericType(of));
    }
}
