using System.Reflection;
using System.Text;
using System.Xml.Linq;

namespace FlapAero.Tests.Architecture;

/// <summary>The library's public calculations, each with its doc comment.</summary>
internal static class DocumentedCalculations
{
    private static readonly Assembly Library = typeof(Air).Assembly;

    private static readonly XDocument Comments =
        XDocument.Load(Path.ChangeExtension(Library.Location, ".xml"));

    /// <summary>What reads, formats or assembles calculates nothing.</summary>
    private static readonly Type[] NoCalculations = [typeof(string), typeof(bool), typeof(int), typeof(void), typeof(Aeroplane), typeof(Configuration), typeof(LandingSpread), typeof(Manual), typeof(School), typeof(Enum), typeof((string, double))];

    public static IEnumerable<MethodInfo> Methods() =>
        Library.GetExportedTypes()
            .Where(type => type.Namespace == "FlapAero")
            .SelectMany(type => type.GetMethods(
                BindingFlags.Public | BindingFlags.Static | BindingFlags.Instance | BindingFlags.DeclaredOnly))
            .Where(method => !method.IsSpecialName && method.GetBaseDefinition().DeclaringType == method.DeclaringType)
            .Where(method => !method.IsDefined(typeof(System.Runtime.CompilerServices.CompilerGeneratedAttribute)))
            .Where(method => !NoCalculations.Contains(method.ReturnType));

    public static XElement? Comment(MethodInfo method)
    {
        string id = Id(method);
        return Comments.Descendants("member").SingleOrDefault(member => (string?)member.Attribute("name") == id);
    }

    /// <summary>A method's name in the compiler's documentation file.</summary>
    public static string Id(MethodInfo method)
    {
        var id = new StringBuilder("M:").Append(method.DeclaringType!.FullName).Append('.').Append(method.Name);
        if (method.IsGenericMethod) id.Append("``").Append(method.GetGenericArguments().Length);
        ParameterInfo[] parameters = method.GetParameters();
        if (parameters.Length > 0)
            id.Append('(').AppendJoin(',', parameters.Select(parameter => Name(parameter.ParameterType))).Append(')');
        return id.ToString();
    }

    private static string Name(Type type)
    {
        if (type.IsByRef) return Name(type.GetElementType()!) + "@";
        if (type.IsArray) return Name(type.GetElementType()!) + "[]";
        if (type.IsGenericMethodParameter) return "``" + type.GenericParameterPosition;
        if (!type.IsGenericType) return type.FullName!;
        string open = type.GetGenericTypeDefinition().FullName!;
        return open[..open.IndexOf('`', StringComparison.Ordinal)]
            + "{" + string.Join(',', type.GetGenericArguments().Select(Name)) + "}";
    }
}
