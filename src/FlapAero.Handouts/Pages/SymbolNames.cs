namespace FlapAero.Handouts.Pages;

/// <summary>What the trade calls the symbols of the lessons' formulas, and what people call the signs.</summary>
internal static class SymbolNames
{
    /// <summary>Only what means the same in every lesson: a number of landings and a load factor are both n, so n stays a letter.</summary>
    private static readonly Dictionary<string, string> Trade = new(StringComparer.Ordinal)
    {
        ["V"] = "airspeed",
        ["V S"] = "stall speed",
        ["V MD"] = "minimum drag speed",
        ["V S φ"] = "stall speed in the turn",
        ["W"] = "weight",
        ["L"] = "lift",
        ["D"] = "drag",
        ["T"] = "thrust",
        ["S"] = "wing area",
        ["m"] = "mass",
        ["E"] = "energy",
        ["h"] = "height",
        ["h e"] = "energy height",
        ["w"] = "headwind",
        ["C L"] = "lift coefficient",
        ["C L max"] = "maximum lift coefficient",
        ["C D"] = "drag coefficient",
        ["C D 0"] = "drag coefficient without lift",
        ["ρ"] = "density",
        ["α"] = "the angle of attack",
        ["θ"] = "the pitch attitude",
        ["γ"] = "the angle of the path",
        ["γ d"] = "the angle of descent",
        ["γ g"] = "the angle of the path over the ground",
        ["φ"] = "the bank angle",
        ["φ 0"] = "the planned bank angle",
        ["i w"] = "the wing's incidence",
    };

    private static readonly Dictionary<string, string> Letters = new(StringComparer.Ordinal)
    {
        ["α"] = "alpha",
        ["β"] = "beta",
        ["γ"] = "gamma",
        ["δ"] = "delta",
        ["ε"] = "epsilon",
        ["ϵ"] = "epsilon",
        ["η"] = "eta",
        ["θ"] = "theta",
        ["κ"] = "kappa",
        ["λ"] = "lambda",
        ["μ"] = "mu",
        ["ν"] = "nu",
        ["π"] = "pi",
        ["ρ"] = "rho",
        ["σ"] = "sigma",
        ["τ"] = "tau",
        ["φ"] = "phi",
        ["ϕ"] = "phi",
        ["χ"] = "chi",
        ["ψ"] = "psi",
        ["ω"] = "omega",
        ["Γ"] = "capital gamma",
        ["Δ"] = "delta",
        ["Λ"] = "capital lambda",
        ["Σ"] = "capital sigma",
        ["Φ"] = "capital phi",
        ["Ω"] = "capital omega",
        ["∞"] = "infinity",
        ["°"] = "degrees",
        ["∘"] = "degrees",
        ["%"] = "per cent",
        ["′"] = "prime",
    };

    private static readonly Dictionary<string, string> Functions = new(StringComparer.Ordinal)
    {
        ["sin"] = "the sine of",
        ["cos"] = "the cosine of",
        ["tan"] = "the tangent of",
        ["arctan"] = "the angle whose tangent is",
        ["arcsin"] = "the angle whose sine is",
        ["arccos"] = "the angle whose cosine is",
        ["ln"] = "the natural logarithm of",
        ["log"] = "the logarithm of",
        ["exp"] = "the exponential of",
        ["max"] = "the largest of",
        ["min"] = "the smallest of",
    };

    private static readonly Dictionary<string, string> Relations = new(StringComparer.Ordinal)
    {
        ["="] = "equals",
        ["≈"] = "is about",
        ["≠"] = "is not",
        ["<"] = "is less than",
        [">"] = "is more than",
        ["≤"] = "is at most",
        ["≥"] = "is at least",
        ["∝"] = "is in proportion to",
        ["≡"] = "is the same as",
        ["→"] = "goes to",
        ["⇒"] = "so",
    };

    private static readonly Dictionary<string, string> Operators = new(StringComparer.Ordinal)
    {
        ["+"] = "plus",
        ["−"] = "minus",
        ["-"] = "minus",
        ["±"] = "plus or minus",
        ["∓"] = "minus or plus",
        ["⋅"] = "times",
        ["·"] = "times",
        ["×"] = "times",
        ["∗"] = "times",
        ["/"] = "over",
        ["÷"] = "divided by",
    };

    /// <summary>The trade's name of a symbol with its subscripts, in the form "C L max"; null where it has none.</summary>
    public static string? Of(string symbol) => Trade.GetValueOrDefault(symbol);

    /// <summary>A letter as it is spoken.</summary>
    public static string Letter(string sign) => Letters.GetValueOrDefault(sign, sign);

    /// <summary>How a function begins; null for what is none.</summary>
    public static string? Function(string name) => Functions.GetValueOrDefault(name);

    /// <summary>How an equation or an inequality is spoken; null for another sign.</summary>
    public static string? Relation(string sign) => Relations.GetValueOrDefault(sign);

    /// <summary>How a sum or a product is spoken; null for another sign.</summary>
    public static string? Operator(string sign) => Operators.GetValueOrDefault(sign);

    /// <summary>Whether the sign makes a sum, which must be kept together where it is divided or multiplied.</summary>
    public static bool IsSum(string sign) => sign is "+" or "−" or "-" or "±" or "∓";
}
