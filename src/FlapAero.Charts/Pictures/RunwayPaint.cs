namespace FlapAero.Charts;

/// <summary>
/// The paint on a runway, in metres from the threshold and from the centreline: the trade's common form, drawn from
/// memory, not to any standard's dimensions. An aiming point mark stands where the usual path meets the runway.
/// </summary>
internal static class RunwayPaint
{
    /// <summary>Invented, for the drawings.</summary>
    internal const double HalfWidth = 11.5;

    internal const double AimingPointLength = 45;

    /// <summary>Areas: corners along and across.</summary>
    internal static IEnumerable<(double Along, double Across)[]> Of(string name, double length, double aimingPoint)
    {
        foreach (int side in (int[])[-1, 1])
        {
            yield return Bar(0, length, side * (HalfWidth - 0.45), 0.45);
            yield return Bar(aimingPoint, aimingPoint + AimingPointLength, side * 5.5, 2);
            foreach (double across in (double[])[2, 5, 8]) yield return Bar(6, 36, side * across, 0.9);
        }
        for (double along = 75; along + 30 < length - 20; along += 50) yield return Bar(along, along + 30, 0, 0.45);
        double left = -(4.5 * name.Length - 1.5) / 2;
        for (int i = 0; i < name.Length; i++)
            foreach ((double Along, double Across)[] stroke in Digit(name[i], left + 4.5 * i)) yield return stroke;
    }

    private static (double Along, double Across)[] Bar(double from, double to, double across, double half) =>
        [(from, across - half), (to, across - half), (to, across + half), (from, across + half)];

    /// <summary>
    /// A figure 9 m tall and 3 m wide of straight strokes, upright for who lands; other letters stay away.
    /// </summary>
    private static IEnumerable<(double Along, double Across)[]> Digit(char digit, double left)
    {
        const double foot = 45, half = 0.45, tall = 9, wide = 3;
        string strokes = digit switch
        {
            '0' => "tbulvm",
            '1' => "vm",
            '2' => "tvclb",
            '3' => "tvcmb",
            '4' => "uvcm",
            '5' => "tucmb",
            '6' => "tuclmb",
            '7' => "tvm",
            '8' => "tcbulvm",
            '9' => "tcbuvm",
            _ => "",
        };
        foreach (char stroke in strokes)
            yield return stroke switch
            {
                't' => Bar(foot + tall - 2 * half, foot + tall, left + wide / 2, wide / 2),
                'c' => Bar(foot + tall / 2 - half, foot + tall / 2 + half, left + wide / 2, wide / 2),
                'b' => Bar(foot, foot + 2 * half, left + wide / 2, wide / 2),
                'u' => Bar(foot + tall / 2, foot + tall, left + half, half),
                'l' => Bar(foot, foot + tall / 2, left + half, half),
                'v' => Bar(foot + tall / 2, foot + tall, left + wide - half, half),
                _ => Bar(foot, foot + tall / 2, left + wide - half, half),
            };
    }
}
