using Mono.Cecil;

namespace FlapAero.Cli.Tests;

/// <summary>The references between our assemblies run one way, and only the builder of pages knows the kernel.</summary>
public sealed class ReferenceArrowTests
{
    private static readonly Dictionary<string, string[]> Allowed = new(StringComparer.Ordinal)
    {
        ["FlapAero"] = [],
        ["FlapAero.Charts"] = ["FlapAero"],
        ["FlapAero.Notebooks"] = ["FlapAero", "FlapAero.Charts"],
        ["FlapAero.Handouts"] = ["FlapAero", "FlapAero.Charts", "FlapAero.Notebooks"],
        ["FlapAero.Cli"] = ["FlapAero", "FlapAero.Charts", "FlapAero.Notebooks", "FlapAero.Handouts"],
    };

    public static TheoryData<string> Names => [.. Allowed.Keys];

    [Fact]
    public void Assemblies_OfOurs_AreAllInTheTable()
    {
        IEnumerable<string?> ours = Directory.GetFiles(AppContext.BaseDirectory, "FlapAero*.dll")
            .Select(Path.GetFileNameWithoutExtension).Where(name => !name!.EndsWith(".Tests", StringComparison.Ordinal));

        Assert.Equal(Allowed.Keys.Order(StringComparer.Ordinal), ours.Order(StringComparer.Ordinal));
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void References_OfAnAssembly_RunOneWay(string name)
    {
        using ModuleDefinition module = Open(name);

        Assert.All(
            module.AssemblyReferences.Select(r => r.Name).Where(r => r.StartsWith("FlapAero", StringComparison.Ordinal)),
            reference => Assert.Contains(reference, Allowed[name]));
    }

    /// <summary>Plain numbers stay inside the library: whoever is outside asks it in quantities.</summary>
    [Theory]
    [MemberData(nameof(Names))]
    public void Equations_AreSeen_ByTheLibraryAlone(string name)
    {
        using ModuleDefinition module = Open(name);
        IEnumerable<string> seen = module.GetTypeReferences().Where(type => type.Namespace == "FlapAero.Equations").Select(type => type.Name);

        Assert.Equal(name == "FlapAero", module.Types.Any(type => type.Namespace == "FlapAero.Equations"));
        Assert.Empty(seen);
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void References_ToTheKernel_AreOfHandoutsAlone(string name)
    {
        using ModuleDefinition module = Open(name);
        string[] kernel = [.. module.AssemblyReferences.Select(r => r.Name)
            .Where(r => r is "Microsoft.DotNet.Interactive" or "Microsoft.CodeAnalysis.Scripting")];

        Assert.Equal(name == "FlapAero.Handouts" ? 2 : 0, kernel.Length);
    }

    /// <summary>In Handouts two classes, and what the compiler makes inside them, touch the kernel's types.</summary>
    [Fact]
    public void Kernel_InHandouts_IsKnownToTwoClasses()
    {
        using ModuleDefinition module = Open("FlapAero.Handouts");
        IEnumerable<string> touching = module.GetTypes()
            .Where(type => Mentioned(type).Any(t => t.Scope is AssemblyNameReference a && a.Name.StartsWith("Microsoft.DotNet.Interactive", StringComparison.Ordinal)))
            .Select(type => Outermost(type).FullName).Distinct(StringComparer.Ordinal);

        Assert.Equal(["FlapAero.Handouts.Kernels.CSharpCells", "FlapAero.Handouts.Kernels.InteractiveKernel"], touching.Order(StringComparer.Ordinal));
    }

    private static ModuleDefinition Open(string name) => ModuleDefinition.ReadModule(Path.Combine(AppContext.BaseDirectory, name + ".dll"));

    private static TypeDefinition Outermost(TypeDefinition type) => type.DeclaringType is null ? type : Outermost(type.DeclaringType);

    private static IEnumerable<TypeReference> Mentioned(TypeDefinition type)
    {
        foreach (FieldDefinition field in type.Fields)
            yield return field.FieldType.GetElementType();
        foreach (MethodDefinition method in type.Methods)
        {
            yield return method.ReturnType.GetElementType();
            foreach (ParameterDefinition parameter in method.Parameters)
                yield return parameter.ParameterType.GetElementType();
            if (!method.HasBody)
                continue;
            foreach (Mono.Cecil.Cil.Instruction instruction in method.Body.Instructions)
                if (instruction.Operand is MemberReference { DeclaringType: { } declaring })
                    yield return declaring.GetElementType();
        }
    }
}
