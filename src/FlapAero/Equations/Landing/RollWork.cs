namespace FlapAero.Equations;

/// <summary>
/// What the forces of a roll have done since the touchdown: ∫ F (V − w) dt, each as a share of ½ m (V_td − w)². The work is done over the
/// ground, and so is the energy: an observer who drifts with the wind counts others.
/// </summary>
internal static class RollWork
{
    /// <summary>The work up to each state of the two rolls.</summary>
    public static List<RollWorkState> Along(in LandingInput input, IReadOnlyList<TrajectoryState> states)
    {
        var works = new List<RollWorkState>();
        // Of the laws only what slows is asked: neither thrust nor wind.
        GroundRoll roll = new(input, default, default, default, 0);
        RollStage noseHigh = roll.NoseHigh(null), braking = roll.Braking;
        double touchdown = 0, energy = 0;
        RollPowers sum = default;
        for (int i = 0; i < states.Count; i++)
        {
            TrajectoryState state = states[i];
            if (state.Stage is not (LandingStage.RollNoseHigh or LandingStage.RollBraking))
                continue;
            double ground = state.Speed - state.Headwind;
            if (works.Count == 0)
                (touchdown, energy) = (state.Distance, 0.5 * ground * ground);
            else if (states[i - 1].Stage == state.Stage)
                sum += Step(state.Stage == LandingStage.RollNoseHigh ? noseHigh : braking, states[i - 1], state, input.Mass) * (1 / energy);
            works.Add(new(state.Stage, state.Distance - touchdown, ground, sum, 0.5 * ground * ground / energy));
        }

        return works;
    }

    /// <summary>Simpson's rule; the speed halfway from the speeds and the slowing at both ends, a cubic: the error goes with the fourth power.</summary>
    private static RollPowers Step(RollStage stage, in TrajectoryState from, in TrajectoryState to, double mass)
    {
        double lasts = to.Time - from.Time, first = from.Thrust / mass, last = to.Thrust / mass;
        RollPowers begin = Forces(stage, from.Speed, first), end = Forces(stage, to.Speed, last);
        // u over the ground from its values and slopes, T/m evenly between.
        double groundFrom = from.Speed - from.Headwind, groundTo = to.Speed - to.Headwind;
        double halfway = 0.5 * (groundFrom + groundTo) + lasts / 8 * (end.Sum - begin.Sum);
        RollPowers middle = Forces(stage, halfway + 0.5 * (from.Headwind + to.Headwind), 0.5 * (first + last));
        return (begin * groundFrom + middle * (4 * halfway) + end * groundTo) * (lasts / 6);
    }

    private static RollPowers Forces(RollStage stage, double speed, double thrust)
    {
        (double drag, double friction, double grade) = stage.Slowing(speed);
        return new(drag, friction, -thrust, grade);
    }
}

/// <summary>Force, power, work or share of energy, per mass, of drag, wheels, propeller and slope; positive where it slows.</summary>
internal readonly record struct RollPowers(double Drag, double Wheels, double Propeller, double Slope)
{
    public double Sum => Drag + Wheels + Propeller + Slope;

    public static RollPowers operator +(RollPowers a, RollPowers b) =>
        new(a.Drag + b.Drag, a.Wheels + b.Wheels, a.Propeller + b.Propeller, a.Slope + b.Slope);

    public static RollPowers operator *(RollPowers a, double times) => new(a.Drag * times, a.Wheels * times, a.Propeller * times, a.Slope * times);
}

/// <summary>A moment of a roll: metres since the touchdown, speed over the ground, shares of the energy taken and left.</summary>
internal readonly record struct RollWorkState(LandingStage Stage, double Distance, double GroundSpeed, RollPowers Taken, double Left);
