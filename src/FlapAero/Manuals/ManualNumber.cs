namespace FlapAero.Manuals;

/// <summary>Numbers that the same test flight and the same law made: they err together.</summary>
internal enum NumberKind
{
    Stall,
    GlideSpeed,
    GlideRatio,
    Level,
    Climb,
    GroundRoll,
    FromFiftyFeet,
    Approach,
    FlapsUp,
}

/// <summary>A number of the manual and its twin in the model. Immutable.</summary>
/// <param name="What">What it is, in words.</param>
/// <param name="Written">As the manual prints it.</param>
/// <param name="Line">Its line.</param>
/// <param name="Unit">The unit of the comparison.</param>
/// <param name="Given">The number in that unit.</param>
/// <param name="Step">The step of its rounding, in that unit.</param>
/// <param name="Error">Standard error by its own rounding.</param>
/// <param name="Kind">Its kind.</param>
/// <param name="Parts">The laws it hangs on.</param>
/// <param name="Flaps">Its flap setting.</param>
/// <param name="IsFitted">Whether it is fitted or only compared.</param>
/// <param name="Predict">The model's number; the second argument moves the speed it is read at by a share of that speed's own error.</param>
internal sealed record ManualNumber(
    string What, string Written, int Line, string Unit, double Given, double Step, double Error, NumberKind Kind, Parts Parts, int Flaps,
    bool IsFitted, Func<Trial, double, double> Predict);
