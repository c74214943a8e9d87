using CsCheck;

namespace FlapAero.Tests.Properties;

/// <summary>The loop of a test that throws any numbers at a calculation.</summary>
internal static class FiniteOrRefused
{
    /// <summary>Fails where a result is not finite, or where anything but an argument error with a message comes out.</summary>
    /// <returns>How many samples were answered: a fuzz that is always refused would show nothing.</returns>
    public static int Sample(Gen<double[]> numbers, int samples, Func<double[], double[]> calculation)
    {
        int answered = 0;
        numbers.Sample(
            x =>
            {
                double[] results;
                try
                {
                    results = calculation(x);
                }
                catch (ArgumentException refusal)
                {
                    return refusal.Message.Length > 0;
                }

                Interlocked.Increment(ref answered);
                return results.All(double.IsFinite);
            },
            iter: samples,
            print: x => string.Join(", ", x));
        return answered;
    }
}
