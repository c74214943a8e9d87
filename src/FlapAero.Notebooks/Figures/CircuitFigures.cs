using System.Runtime.CompilerServices;
using FlapAero.Charts;
using UnitsNet;

namespace FlapAero.Notebooks;

/// <summary>Figures of the circuit: its heights, its track, and the turn to final.</summary>
public static class CircuitFigures
{
    /// <summary>Heights from abeam on, with flaps and with flaps up.</summary>
    /// <param name="usual">The circuit with flaps.</param>
    /// <param name="flown">What is flown with flaps up at the same engine speed.</param>
    /// <param name="guess">The reader's prediction, how high above the final path the turn ends with flaps up, which is marked.</param>
    /// <param name="prediction">The prediction's name in the lesson, which the compiler gives.</param>
    /// <returns>The figure.</returns>
    public static Figure HeightsAlongTheTrack(
        Circuit usual, FlownCircuit flown, Length guess, [CallerArgumentExpression(nameof(guess))] string prediction = "")
    {
        ArgumentNullException.ThrowIfNull(usual);
        ArgumentNullException.ThrowIfNull(flown);
        (double, double)[] Heights(IReadOnlyList<CircuitLeg> legs) =>
        [
            .. legs.Skip(1).Select((leg, i) => (legs.Skip(1).Take(i).Sum(before => before.Distance.NauticalMiles), leg.Begin.Height.Feet)),
            (legs.Skip(1).Sum(leg => leg.Distance.NauticalMiles), 0),
        ];
        return new Figure("Heights along the track", Axis.Of("flown since abeam", "", "NM"), Axis.Of("height above the runway", "h", "ft"))
            .Line("with flaps", Heights(usual.Legs)).As(Palette.FullFlap)
            .Line("flaps up, as always", Heights(flown.Legs)).As(Palette.FlapsUp)
            .Mark("final begins", Heights(usual.Legs)[4].Item1, usual.Final.Begin.Height.Feet)
            .Mark("final begins", Heights(flown.Legs)[4].Item1, flown.Legs[5].Begin.Height.Feet)
            .PredictedUp(guess, from: (flown.Legs[5].Begin.Height - flown.AbovePath).Feet, prediction: prediction)
            .Caption($"The usual engine speed from abeam on, the usual place for base. Final is drawn as if nobody put it right.")
            .Reading("held, flaps up meets the runway", $"{flown.MeetsGroundAt:ft 0} past the threshold")
            .Reading("held, with flaps", $"{usual.Plan.AimingPoint:ft 0} past it")
            .Finding($"Flaps up, final begins {flown.AbovePath} above its path; that descent, held, meets the runway "
                + $"{flown.MeetsGroundAt:ft 0} past the threshold. With flaps it meets it {usual.Plan.AimingPoint:ft 0} past.");
    }

    /// <summary>The circuit from above; the reader moves the engine speed with flaps up.</summary>
    /// <param name="usual">The circuit with flaps, at its own engine speed.</param>
    /// <param name="own">The circuit with flaps up that fits.</param>
    /// <param name="usualTurns">The engine speed with flaps.</param>
    /// <param name="ownTurns">The engine speed that fits with flaps up.</param>
    /// <returns>The figure.</returns>
    public static MovingFigure TheCircuitToScale(
        Circuit usual, Circuit own, RotationalSpeed usualTurns, RotationalSpeed ownTurns)
    {
        ArgumentNullException.ThrowIfNull(usual);
        ArgumentNullException.ThrowIfNull(own);
        IEnumerable<(double, double)> Map(Circuit circuit) => circuit.Track.Select(p => (-p.X.NauticalMiles, p.Y.NauticalMiles));
        double turnsUsual = usualTurns.RevolutionsPerMinute, turnsOwn = ownTurns.RevolutionsPerMinute;
        IReadOnlyList<double> settings = Samples.Between(turnsOwn - 20, Math.Max(turnsUsual + 20, turnsOwn + 50), 10);
        return new Figure("The circuit to scale", Axis.Of("before the threshold", "", "NM"), Axis.Of("right of the centreline", "", "NM")).ToScale()
            .Line("with flaps", Map(usual)).As(Palette.FullFlap)
            .Mark("abeam", -own.Downwind.Begin.X.NauticalMiles, own.Plan.Spacing.NauticalMiles)
            .Caption($"From above, without wind, landing to the left. Both reduce power abeam. "
                + $"Each engine speed with flaps up has its own place for base.")
            .Moving(Axis.Of("engine speed, flaps up", "N", "rpm"), settings, start: turnsUsual, (figure, turns) =>
            {
                var speed = RotationalSpeed.FromRevolutionsPerMinute(turns);
                Circuit circuit = own.AtEngineSpeed(speed);
                CircuitPoint turn = circuit.TurnToBase.Begin;
                return figure.Line("flaps up", Map(circuit)).As(Palette.FlapsUp).Mark("base", -turn.X.NauticalMiles, turn.Y.NauticalMiles)
                    .Finding($"At {speed} the turn to base begins {circuit.BaseTurnPastAbeam:nmi 0.00} past abeam, the touchdown point "
                        + $"{circuit.AngleBehindWing:0} behind the wing; with flaps, at {usualTurns}, {usual.BaseTurnPastAbeam:nmi 0.00}.");
            });
    }

    /// <summary>The circuit with flaps up from above, in a calm and in Saturday's wind.</summary>
    /// <param name="own">The circuit in a calm.</param>
    /// <param name="today">The circuit in the day's wind.</param>
    /// <returns>The picture.</returns>
    public static Picture FromAbove(Circuit own, Circuit today)
    {
        ArgumentNullException.ThrowIfNull(own);
        return Charts.Pictures.CircuitFromAbove("The circuit from above", own.Plan.Runway, ("flaps up, no wind", own), ("in Saturday's wind", today))
            .LookFor("On base the wind is behind: the turn to final begins further from the centreline.");
    }

    /// <summary>The turn to final from above, begun early or late; the reader moves when.</summary>
    /// <param name="today">The circuit flown.</param>
    /// <param name="usual">The circuit whose place for the turn is the usual one.</param>
    /// <returns>The figure.</returns>
    public static MovingFigure TheTurnToFinal(Circuit today, Circuit usual)
    {
        ArgumentNullException.ThrowIfNull(today);
        ArgumentNullException.ThrowIfNull(usual);
        double room = today.RoomForTheTurn().Feet, baseAt = -today.TurnToFinal.Begin.X.Feet;
        IEnumerable<(double, double)> Arc(CircuitLeg turn, Length along) => Samples.Between(0, 1, 0.0625)
            .Select(part => turn.Point(turn.Time * part)).Select(p => (-(p.X + along).Feet, p.Y.Feet))
            .Prepend((-(turn.Begin.X + along).Feet, 1.2 * room));
        string planned = QuantityText.Of(today.TurnToFinal.Bank, "0");
        IEnumerable<double> seconds = Samples.Between(-4, 6, 0.5).Where(s => today.TurnedAfter(usual, s).BankForCentreline?.Degrees < 47);
        return new Figure(
                "The turn to final, from above", Axis.Of("before the threshold", "", "ft").Including(baseAt - 4000).Including(baseAt + 500),
                Axis.Of("right of the centreline", "", "ft")).ToScale()
            .Level("centreline", 0).Mark("usual place", baseAt, usual.RoomForTheTurn().Feet).Mark("planned today", baseAt, room)
            .Caption($"Flaps up, the wind behind on base. One line holds {usual.TurnToFinal.Bank:0} of bank; "
                + $"the other takes the bank that makes the centreline.")
            .Moving(Axis.Of("after the usual place", "t", "s"), seconds, start: 0, (figure, after) =>
            {
                FlownCircuit late = today.TurnedAfter(usual, after);
                Angle bank = late.BankForCentreline!.Value;
                CircuitLeg tight = today.Banked(bank.Degrees).TurnToFinal;
                return figure.Line($"{planned} held", Arc(late.Legs[4], Length.Zero))
                    .Line("bank it takes", Arc(tight, late.Legs[4].Begin.X - tight.Begin.X))
                    .Finding($"Begun {Duration.FromSeconds(after)} after the usual place, {planned} of bank ends "
                        + $"{Length.FromFeet(Math.Abs(late.PastCentreline.Feet))} "
                        + $"{(late.PastCentreline > Length.Zero ? "beyond" : "short of")} the centreline. "
                        + $"Making it takes {bank:0}, {100 * late.StallMarginThere!.Value:0} % over the stall.");
            });
    }

    /// <summary>The bank that makes the centreline, by when the turn to final begins.</summary>
    /// <param name="today">The circuit with flaps up in the day's wind.</param>
    /// <param name="own">The circuit with flaps up in a calm.</param>
    /// <param name="usual">The circuit with flaps in a calm, whose place for the turn is the usual one.</param>
    /// <returns>The figure.</returns>
    public static Figure WhatEachSecondTakes(Circuit today, Circuit own, Circuit usual)
    {
        ArgumentNullException.ThrowIfNull(today);
        ArgumentNullException.ThrowIfNull(own);
        ArgumentNullException.ThrowIfNull(usual);
        double limit = today.Plan.BankLimit.Degrees, least = today.TurnToFinal.Bank.Degrees - 5;
        string limitText = QuantityText.Of(today.Plan.BankLimit, "0");
        double? Bank(Circuit circuit, double s) => circuit.TurnedAfter(usual, s).BankForCentreline?.Degrees;
        List<double> Seconds(Circuit circuit) => [.. Samples.Between(-3, 7, 0.25).Where(s => Bank(circuit, s) is { } bank && bank > least && bank < 52)];
        string Margin(double bank) => QuantityText.Of(100 * today.TurnToFinal.Configuration.StallMargin(
            today.TurnToFinal.Airspeed, LoadFactor.InTurn(Angle.FromDegrees(bank))), "0");
        return new Figure("What each second takes", Axis.Of("after the usual place", "t", "s"), Axis.Of("bank for the centreline", "φ", "°"))
            .Line("up, wind", Seconds(today), s => Bank(today, s)!.Value).As(Palette.Changed)
            .Line("flaps up", Seconds(own), s => Bank(own, s)!.Value).As(Palette.FlapsUp)
            .Line("with flaps", Seconds(usual), s => Bank(usual, s)!.Value).As(Palette.FullFlap)
            .Level($"{limitText}:\u00A0{Margin(limit)}\u00A0%", limit).Level($"45°:\u00A0{Margin(45)}\u00A0%", 45)
            .Caption($"All at 1.4 times the stall; one line has Saturday's wind. Each second takes more bank than the one before. "
                + $"Beside {limitText} and 45° of bank stands how far over the stall the aeroplane still is, flaps up.")
            .Finding($"At the usual place the centreline takes {Bank(usual, 0):0}° with flaps in a calm, {Bank(own, 0):0}° with flaps up, "
                + $"{Bank(today, 0):0}° with the wind behind as well. {today.UntilBank(usual, 45)} later that is 45°.");
    }
}
