using UnitsNet;

namespace FlapAero.Charts;

/// <content>Many drawn landings, a few at a time, and what would help where one cannot happen.</content>
internal sealed partial class WhatIf
{
    private const int Tries = 12;

    /// <summary>What can be changed: how it is flown first, then the day, and more speed last.</summary>
    private static readonly string[] CanChange = ["path", "height", "round", "cut", "braking", "along", "mass", "slope", "speed"];

    /// <summary>Landings of a pilot who does not hit every number: the same for the same setting and batch.</summary>
    /// <param name="setting">The setting as JSON.</param>
    /// <param name="batch">Which batch, from 1 on.</param>
    /// <param name="count">Of how many landings.</param>
    /// <returns>JSON with touchdowns and stops of both sides in metres, and how many did not happen; or <c>faults</c>.</returns>
    public string Spread(string setting, int batch, int count) => Answered(setting, (json, read) =>
    {
        json.WriteStartArray("sides");
        foreach (int side in Sides)
        {
            json.WriteStartObject();
            try
            {
                LandingScatterResult landings = ScatterOf(read, side).Fly(count, seed: batch, threads: 1);
                int landed = (int)Math.Round(landings.Landed.Value * count);
                json.WriteNumber("refused", count - landed);
                foreach (string what in (ReadOnlySpan<string>)["touchdown", "stop"])
                {
                    json.WriteStartArray(what);
                    for (int i = 0; i < landed; i++)
                        json.WriteNumberValue((what == "stop" ? landings.StopDistance : landings.TouchdownDistance)
                            .Quantile(landed == 1 ? 0.5 : (double)i / (landed - 1)).Meters);
                    json.WriteEndArray();
                }
            }
            catch (RefusedInputException refused)
            {
                json.WriteString("refusal", refused.Message);
            }
            json.WriteEndObject();
        }
        json.WriteEndArray();
    });

    /// <summary>What would let both landings happen, each change alone and as small as the slider's steps find it.</summary>
    /// <param name="setting">The setting as JSON.</param>
    /// <returns>JSON with <c>help</c>: fields and the values that do; or <c>faults</c>.</returns>
    public string Help(string setting) => Answered(setting, (json, read) =>
    {
        json.WriteStartArray("help");
        foreach (string key in CanChange)
        {
            if (Nearest(read, key) is not { } value) continue;
            json.WriteStartObject();
            json.WriteString("field", key);
            json.WriteNumber("value", value);
            json.WriteEndObject();
        }
        json.WriteEndArray();
    });

    private static double? Nearest(WhatIfSetting setting, string key)
    {
        WhatIfField field = WhatIfField.Of(key);
        (double least, double most) = key == "mass"
            ? (setting.Aeroplane.MinimumMass.Kilograms, setting.Aeroplane.MaximumMass.Kilograms) : (field.Least, field.Most);
        double now = setting[key], reach = Math.Max(now - least, most - now);
        for (int i = 1; i <= Tries; i++)
        {
            foreach (int sign in (ReadOnlySpan<int>)[-1, 1])
            {
                double steps = Math.Round((now + sign * reach * i / Tries - field.Least) / field.Step);
                double value = Math.Round(field.Least + steps * field.Step, 6);
                if (value >= least && value <= most && value != now && Lands(setting.With(key, value))) return value;
            }
        }

        return null;
    }

    private static bool Lands(WhatIfSetting setting)
    {
        try
        {
            return Array.TrueForAll(Sides, side => Landing.Fly(setting.Landing(side)).Happened);
        }
        catch (RefusedInputException)
        {
            return false;
        }
    }

    /// <summary>
    /// The setting's landing with the demo pilot's hand: ±5 kt, ±10 ft, a wind that varies by 5 kt or by the gusts, and a round-out, a power
    /// cut and brakes that are not a machine's. All of it is invented.
    /// </summary>
    private static LandingScatter ScatterOf(WhatIfSetting setting, int side)
    {
        LandingSetup meant = setting.Landing(side);
        LandingTechnique technique = meant.Technique;
        double braking = meant.BrakingFriction, least = Math.Min(braking, Math.Max(meant.Runway.Surface.RollingFriction, 0.6 * braking));
        double gusts = Math.Max(5, setting["gust"]);
        var spread = new LandingSpread
        {
            ThresholdSpeed = Held(technique.ThresholdSpeed, Speed.FromKnots(5)),
            ThresholdHeight = Distribution.TruncatedNormal(
                technique.ThresholdHeight, Length.FromFeet(5), technique.ThresholdHeight - Length.FromFeet(10), technique.ThresholdHeight + Length.FromFeet(10)),
            Headwind = Held(meant.Headwind, Speed.FromKnots(gusts)),
            FlareTimeConstant = Distribution.Triangular(0.9 * technique.FlareTimeConstant, technique.FlareTimeConstant, 1.6 * technique.FlareTimeConstant),
            PowerCutTime = Distribution.Triangular(0.5 * technique.PowerCutTime, technique.PowerCutTime, 1.5 * technique.PowerCutTime),
            BrakingFriction = least < braking ? Distribution.Triangular(least, braking, braking) : null,
        };
        return LandingScatter.Around(meant, spread);
    }

    // What the pilot holds is two deviations of the whole normal, and nothing outside it is flown.
    private static Distribution<Speed> Held(Speed meant, Speed held) =>
        Distribution.TruncatedNormal(meant, held / 2, meant - held, meant + held);
}
