using System.ComponentModel;
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace FlapAero.Explorer;

/// <summary>What can be written at a place of a cell, and what it means: told by the compiler's own view of that cell.</summary>
/// <param name="chain">The cells that ran.</param>
internal sealed class CellNames(CellChain chain)
{
    private static readonly SymbolDisplayFormat Signature = SymbolDisplayFormat.MinimallyQualifiedFormat
        .WithLocalOptions(SymbolDisplayLocalOptions.IncludeType)
        .AddMiscellaneousOptions(SymbolDisplayMiscellaneousOptions.EscapeKeywordIdentifiers);

    private static readonly JsonSerializerOptions Plain = new() { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    private byte[] _packed = "{}"u8.ToArray();
    private Dictionary<string, string>? _docs;
    private ILookup<string, ISymbol> _last = Array.Empty<ISymbol>().ToLookup(s => s.Name);

    /// <summary>Takes what doc comments say, as JSON: a text for each of their keys. It is read when it is first needed.</summary>
    public void Learn(byte[] docs) => (_packed, _docs) = (docs, null);

    /// <summary>The names that can stand where a name begins or is being written, those of the lesson first.</summary>
    /// <param name="code">The cell.</param>
    /// <param name="place">The place in it, 0 before its first character.</param>
    /// <returns>
    /// JSON: <c>from</c>, where the name begins that is being written, and <c>names</c>, each a name and what kind of thing it is.
    /// </returns>
    public string At(string code, int place)
    {
        CSharpCompilation cell = chain.Read(code);
        SyntaxTree tree = cell.SyntaxTrees[0];
        int from = Math.Clamp(place, 0, code.Length);
        while (from > 0 && (char.IsLetterOrDigit(code[from - 1]) || code[from - 1] == '_'))
            from--;
        bool isName = from == code.Length || !char.IsDigit(code[from]);
        IEnumerable<ISymbol> seen = isName ? Seen(cell.GetSemanticModel(tree), tree.GetRoot(), from) : [];
        _last = seen.Where(IsWorthANote).ToLookup(s => s.Name);
        var names = _last.OrderBy(named => Rank(named.First())).ThenBy(named => named.Key, StringComparer.OrdinalIgnoreCase)
            .Select(named => new JsonArray(named.Key, Kind(named.First())));
        return new JsonObject { ["from"] = from, ["names"] = new JsonArray([.. names]) }.ToJsonString(Plain);
    }

    /// <summary>What a name of the last answer means.</summary>
    /// <returns>
    /// JSON: <c>code</c>, how it is written, and <c>words</c>, its doc comment; both empty for a name that was not told.
    /// </returns>
    public string Meaning(string name)
    {
        ISymbol[] all = [.. _last[name]];
        ISymbol? told = all.FirstOrDefault(s => Words(s).Length > 0) ?? all.FirstOrDefault();
        string more = all.Length switch { < 2 => "", 2 => "There is one other form.", _ => $"There are {all.Length - 1} other forms." };
        return new JsonObject
        {
            ["code"] = told?.ToDisplayString(Signature) ?? "",
            ["words"] = string.Join('\n', new[] { told is null ? "" : Words(told), more }.Where(line => line.Length > 0)),
        }.ToJsonString(Plain);
    }

    private static IEnumerable<ISymbol> Seen(SemanticModel model, SyntaxNode root, int from)
    {
        SyntaxToken left = LeftOf(root, from);
        if (IsInText(root, left, from))
            return [];
        if (left.IsKind(SyntaxKind.DotToken))
            return left.Parent switch
            {
                MemberAccessExpressionSyntax access => Behind(model, access.Expression, from),
                MemberBindingExpressionSyntax { Parent: ConditionalAccessExpressionSyntax maybe } => Behind(model, maybe.Expression, from),
                MemberBindingExpressionSyntax { Parent.Parent: ConditionalAccessExpressionSyntax maybe } => Behind(model, maybe.Expression, from),
                QualifiedNameSyntax name => Behind(model, name.Left, from),
                _ => [],
            };
        IEnumerable<ISymbol> seen = model.LookupSymbols(from);
        return left.Parent switch
        {
            InitializerExpressionSyntax { Parent: ExpressionSyntax made } when model.GetTypeInfo(made).Type is { } type =>
                model.LookupSymbols(from, type).Where(s => s is IPropertySymbol { IsStatic: false, SetMethod: not null }),
            ArgumentListSyntax { Parent: { } call } => seen.Concat(Called(model, call).SelectMany(method => method.Parameters)),
            _ => seen,
        };
    }

    private static IEnumerable<ISymbol> Behind(SemanticModel model, ExpressionSyntax owner, int from)
    {
        if (model.GetSymbolInfo(owner).Symbol is INamespaceOrTypeSymbol named)
            return named is INamespaceSymbol ? model.LookupNamespacesAndTypes(from, named) : model.LookupStaticMembers(from, named);
        // Before a next line, what is being written looks to the compiler like a declaration: "approach.Kno" is no type.
        ITypeSymbol? type = owner is NameSyntax
            ? model.GetSpeculativeTypeInfo(
                from, SyntaxFactory.ParseExpression(owner.ToString()), SpeculativeBindingOption.BindAsExpression).Type
            : model.GetTypeInfo(owner).Type;
        // The underlying value of an optional one is behind "?.".
        if (owner.Parent is ConditionalAccessExpressionSyntax
            && type is INamedTypeSymbol { OriginalDefinition.SpecialType: SpecialType.System_Nullable_T } optional)
            type = optional.TypeArguments[0];
        return type is null or IErrorTypeSymbol ? []
            : model.LookupSymbols(from, type, includeReducedExtensionMethods: true)
                .Where(s => s is IMethodSymbol { ReducedFrom: not null } or ({ IsStatic: false } and not ITypeSymbol));
    }

    private static IEnumerable<IMethodSymbol> Called(SemanticModel model, SyntaxNode call)
    {
        SymbolInfo info = model.GetSymbolInfo(call);
        IEnumerable<ISymbol> methods = info.Symbol is { } one ? [one] : info.CandidateSymbols;
        if (call is InvocationExpressionSyntax invocation)
            methods = methods.Concat(model.GetMemberGroup(invocation.Expression));
        return methods.OfType<IMethodSymbol>();
    }

    private static SyntaxToken LeftOf(SyntaxNode root, int from)
    {
        SyntaxToken token = root.FindToken(from);
        return token.SpanStart < from && token.Span.End <= from ? token : token.GetPreviousToken();
    }

    private static bool IsInText(SyntaxNode root, SyntaxToken left, int from)
    {
        SyntaxTrivia before = root.FindTrivia(Math.Max(from - 1, 0));
        bool isInComment = before.IsKind(SyntaxKind.SingleLineCommentTrivia)
            || (before.IsKind(SyntaxKind.MultiLineCommentTrivia) && from < before.Span.End);
        SyntaxToken token = root.FindToken(from);
        bool isInLiteral = token.Kind() is SyntaxKind.StringLiteralToken or SyntaxKind.CharacterLiteralToken
            && token.SpanStart < from;
        bool isInInterpolated = left.IsKind(SyntaxKind.InterpolatedStringStartToken) || left.IsKind(SyntaxKind.InterpolatedStringTextToken)
            || (left.IsKind(SyntaxKind.CloseBraceToken) && left.Parent is InterpolationSyntax);
        return isInComment || isInLiteral || isInInterpolated;
    }

    private static bool IsWorthANote(ISymbol symbol) =>
        symbol.CanBeReferencedByName && symbol is not { IsStatic: true, ContainingType.SpecialType: SpecialType.System_Object }
        && !symbol.GetAttributes().Any(a => a.AttributeClass?.Name == nameof(EditorBrowsableAttribute)
            && a.ConstructorArguments is [{ Value: (int)EditorBrowsableState.Never }]);

    /// <summary>What the reader has made, then what the lesson's library gives, then the rest.</summary>
    private static int Rank(ISymbol symbol) => symbol switch
    {
        IParameterSymbol or ILocalSymbol => 0,
        _ when symbol.ContainingType?.IsScriptClass == true => 0,
        _ when symbol.ContainingAssembly?.Name.StartsWith("FlapAero", StringComparison.Ordinal) == true => 1,
        INamespaceSymbol => 3,
        _ => 2,
    };

    private static string Kind(ISymbol symbol) => symbol switch
    {
        IParameterSymbol { ContainingSymbol: IMethodSymbol { MethodKind: not (MethodKind.AnonymousFunction or MethodKind.LocalFunction) } } => "argument",
        ILocalSymbol or IParameterSymbol or IFieldSymbol { ContainingType.IsScriptClass: true } => "variable",
        IFieldSymbol or IPropertySymbol => "value",
        IMethodSymbol => "method",
        INamespaceSymbol => "namespace",
        IEventSymbol => "event",
        _ => "type",
    };

    private string Words(ISymbol symbol)
    {
        _docs ??= JsonSerializer.Deserialize<Dictionary<string, string>>(_packed) ?? [];
        ISymbol defined = symbol is IMethodSymbol { ReducedFrom: { } extension } ? extension : symbol;
        if (defined is IParameterSymbol { ContainingSymbol: { } method } parameter)
            return _docs.GetValueOrDefault($"{method.OriginalDefinition.GetDocumentationCommentId()} {parameter.Name}") ?? "";
        return _docs.GetValueOrDefault(defined.OriginalDefinition.GetDocumentationCommentId() ?? "") ?? "";
    }
}
