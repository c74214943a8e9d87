using System.Collections.Concurrent;
using System.Collections.Immutable;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.Scripting;

namespace FlapAero.Handouts.Kernels;

/// <summary>
/// Finds the assemblies that cells refer to, each once a process: the compiler asks anew for every cell, and what it has read of an assembly it
/// reads again for a reference that is not the same object.
/// </summary>
internal sealed class KnownReferences : MetadataReferenceResolver
{
    private readonly ScriptMetadataResolver _resolver = ScriptMetadataResolver.Default.WithBaseDirectory(Environment.CurrentDirectory);
    private readonly ConcurrentDictionary<(string, string?, MetadataReferenceProperties), ImmutableArray<PortableExecutableReference>> _named = new();
    private readonly ConcurrentDictionary<AssemblyIdentity, PortableExecutableReference?> _missing = new();

    private KnownReferences()
    {
    }

    public static KnownReferences OfThisProcess { get; } = new();

    public override bool ResolveMissingAssemblies => _resolver.ResolveMissingAssemblies;

    public override ImmutableArray<PortableExecutableReference> ResolveReference(string reference, string? baseFilePath, MetadataReferenceProperties properties) =>
        _named.GetOrAdd((reference, baseFilePath, properties), key => _resolver.ResolveReference(key.Item1, key.Item2, key.Item3));

    public override PortableExecutableReference? ResolveMissingAssembly(MetadataReference definition, AssemblyIdentity referenceIdentity) =>
        _missing.GetOrAdd(referenceIdentity, identity => _resolver.ResolveMissingAssembly(definition, identity));

    public override bool Equals(object? other) => ReferenceEquals(this, other);

    public override int GetHashCode() => System.Runtime.CompilerServices.RuntimeHelpers.GetHashCode(this);
}
