using Mono.Cecil;

namespace FlapAero.Tests.Architecture;

/// <summary>Equations are plain numbers: no quantity, no chart, no console reaches them.</summary>
public sealed class EquationsArchitectureTests
{
    [Fact]
    public void Equations_EveryReference_IsPlainNumbers()
    {
        using AssemblyDefinition library = AssemblyDefinition.ReadAssembly(typeof(Air).Assembly.Location);
        TypeDefinition[] equations = [.. library.MainModule.GetTypes().Where(IsEquation)];

        Assert.True(equations.Length > 5);
        string[] strangers = [.. equations.SelectMany(References).Where(IsStranger).Distinct()];
        Assert.Empty(strangers);
    }

    [Fact]
    public void PublicSurface_EveryReference_OfTheDetector_FindsUnits()
    {
        // The detector must be able to fail: the shell above the equations is full of quantities.
        using AssemblyDefinition library = AssemblyDefinition.ReadAssembly(typeof(Air).Assembly.Location);
        Assert.Contains(library.MainModule.GetType("FlapAero.Configuration").Methods.SelectMany(MethodReferences), IsStranger);
    }

    [Fact]
    public void Equations_EveryType_IsInternal()
    {
        Assert.DoesNotContain(
            typeof(Air).Assembly.GetExportedTypes(),
            type => type.Namespace?.StartsWith("FlapAero.Equations", StringComparison.Ordinal) == true);
    }

    private static bool IsEquation(TypeDefinition type)
    {
        TypeDefinition outermost = type;
        while (outermost.DeclaringType is { } outer) outermost = outer;
        return outermost.Namespace.StartsWith("FlapAero.Equations", StringComparison.Ordinal);
    }

    private static bool IsStranger(string name) =>
        name.StartsWith("UnitsNet", StringComparison.Ordinal)
        || name.StartsWith("Plotly", StringComparison.Ordinal)
        || name.StartsWith("System.Console", StringComparison.Ordinal);

    private static IEnumerable<string> References(TypeDefinition type) =>
        type.Fields.Select(field => field.FieldType.FullName).Concat(type.Methods.SelectMany(MethodReferences));

    private static IEnumerable<string> MethodReferences(MethodDefinition method)
    {
        yield return method.ReturnType.FullName;
        foreach (ParameterDefinition parameter in method.Parameters) yield return parameter.ParameterType.FullName;
        if (!method.HasBody) yield break;
        foreach (var local in method.Body.Variables) yield return local.VariableType.FullName;
        foreach (var instruction in method.Body.Instructions)
        {
            if (instruction.Operand is MemberReference { DeclaringType: { } declaring }) yield return declaring.FullName;
            if (instruction.Operand is TypeReference used) yield return used.FullName;
        }
    }
}
