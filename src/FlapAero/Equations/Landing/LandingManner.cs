namespace FlapAero.Equations;

/// <summary>What of a landing is no number; the default is the canonical landing.</summary>
/// <param name="Profile">Mean headwind by height of the wing, m to m/s, in place of a steady one; the input's headwind is the profile's at the threshold.</param>
/// <param name="BrakesFromTouchdown">Nose down and brakes on from the touchdown.</param>
/// <param name="PutsWheelsOn">
/// The pilot puts the wheels on where the hold-off ends: there is no settling, and the height that is left is given up without time or
/// distance.
/// </param>
internal readonly record struct LandingManner(
    Func<double, double>? Profile = null, bool BrakesFromTouchdown = false, bool PutsWheelsOn = false);
