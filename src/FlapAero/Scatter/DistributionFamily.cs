namespace FlapAero;

/// <summary>How the values of an input are spread. Thread-safe: a plain value. The default, <see cref="Fixed"/>, is no spread at all.</summary>
public enum DistributionFamily
{
    /// <summary>One value.</summary>
    Fixed = 0,

    /// <summary>Every value between two is as likely.</summary>
    Uniform,

    /// <summary>The normal distribution.</summary>
    Normal,

    /// <summary>The part of a normal distribution between two values.</summary>
    TruncatedNormal,

    /// <summary>Rises from the least value to the likeliest, falls to the greatest.</summary>
    Triangular,
}
