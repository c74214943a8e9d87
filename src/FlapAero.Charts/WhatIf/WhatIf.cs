using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;

namespace FlapAero.Charts;

/// <summary>
/// The model behind the what-if page: a setting in JSON in, what became of it in JSON out. Every number is the library's own; nothing is
/// computed here. One page has one of these: it holds the aeroplanes that were dropped on it.
/// </summary>
internal sealed partial class WhatIf
{
    private static readonly JsonWriterOptions Plain = new() { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    private readonly Dictionary<string, Aeroplane> _aeroplanes = DemoAeroplanes.All.ToDictionary(a => a.Name, StringComparer.Ordinal);

    /// <summary>Two landings in one setting, in numbers and as paths to draw, or why there is none and what would help.</summary>
    /// <param name="setting">The setting as JSON.</param>
    /// <returns>The answer as JSON: <c>faults</c>, or the runway and <c>sides</c>.</returns>
    public string Land(string setting) => Answered(setting, (json, read) =>
    {
        json.WriteNumber("available", read.Available.Meters);
        json.WriteNumber("third", read.Available.Meters / 3);
        json.WriteNumber("aim", FinalPath.AimingPoint(read.Height, read.Path).Meters);
        json.WriteStartArray("sides");
        for (int side = 0; side < 2; side++) Side(json, read, side);
        json.WriteEndArray();
    });

    /// <summary>Takes the file of an aeroplane.</summary>
    /// <param name="name">The file's name.</param>
    /// <param name="text">Its text.</param>
    /// <returns>The aeroplane's name, flaps and masses as JSON, or <c>faults</c>.</returns>
    public string Take(string name, string text)
    {
        try
        {
            Aeroplane aeroplane = AeroplaneFile.Parse(text, string.IsNullOrWhiteSpace(name) ? "the file" : name);
            _aeroplanes[aeroplane.Name] = aeroplane;
            return Json(json => Describe(json, aeroplane));
        }
        catch (AeroplaneFileException refused)
        {
            return Json(json => Faults(json, [.. refused.Faults.Take(12).Select(fault => new WhatIfFault("aeroplane", fault.ToString()))]));
        }
    }

    /// <summary>An aeroplane as the page's controls need it.</summary>
    internal static void Describe(Utf8JsonWriter json, Aeroplane aeroplane)
    {
        json.WriteString("name", aeroplane.Name);
        json.WriteNumber("least", Math.Ceiling(aeroplane.MinimumMass.Kilograms));
        json.WriteNumber("most", Math.Floor(aeroplane.MaximumMass.Kilograms));
        if (aeroplane.CrosswindLimit is { } limit) json.WriteNumber("crosswind", limit.Knots);
        json.WriteStartArray("flaps");
        foreach (FlapSetting flaps in aeroplane.FlapSettings) json.WriteStringValue(flaps.Name);
        json.WriteEndArray();
    }

    private string Answered(string setting, Action<Utf8JsonWriter, WhatIfSetting> write)
    {
        var faults = new List<WhatIfFault>();
        try
        {
            if (WhatIfSetting.Read(setting, name => _aeroplanes.GetValueOrDefault(name), faults) is { } read)
                return Json(json => write(json, read));
        }
        catch (RefusedInputException refused)
        {
            // What concerns both sides alike: the runway, the air, the mass.
            faults.Add(new("", refused.Message));
        }
        return Json(json => Faults(json, faults));
    }

    private static void Side(Utf8JsonWriter json, WhatIfSetting setting, int side)
    {
        json.WriteStartObject();
        FlapSetting flaps = setting.Aeroplane.FlapSettings[setting.Flaps[side]];
        json.WriteString("flaps", flaps.Name);
        json.WriteNumber("style", StyleOf(setting, side));
        try
        {
            Configuration configuration = setting.Configuration(side);
            LandingSetup landing = setting.Landing(side);
            Outcome<LandingResult, LandingRefusal> outcome = Landing.Fly(landing);
            LandingResult? result = outcome.Happened ? outcome.Value : null;
            json.WriteStartObject("numbers");
            foreach ((string key, double value) in WhatIfRow.Of(setting, landing, configuration, result)) json.WriteNumber(key, value);
            json.WriteEndObject();
            if (result is null) json.WriteString("refusal", WhatIfWords.Sentences(outcome.Explanation));
            else Path(json, landing, result);
        }
        catch (RefusedInputException refused)
        {
            json.WriteString("refusal", refused.Message);
        }
        json.WriteEndObject();
    }

    /// <summary>The path in whole centimetres, along and up in turn: finer nobody draws.</summary>
    private static void Path(Utf8JsonWriter json, LandingSetup landing, LandingResult result)
    {
        json.WriteStartArray("path");
        foreach ((double along, double up) in WhatIfPath.Of(landing, result))
        {
            json.WriteNumberValue((int)Math.Round(100 * along));
            json.WriteNumberValue((int)Math.Round(100 * up));
        }
        json.WriteEndArray();
    }

    /// <summary>The place of a side's style in the palette: the flap setting's, and what the reader changed where both are the same.</summary>
    private static int StyleOf(WhatIfSetting setting, int side)
    {
        int Of(int place) => place == 0 ? 0 : place == setting.Aeroplane.FlapSettings.Count - 1 ? 1 : 2;
        int style = Of(setting.Flaps[side]);
        return side == 1 && style == Of(setting.Flaps[0]) ? 3 : style;
    }

    private static void Faults(Utf8JsonWriter json, List<WhatIfFault> faults)
    {
        json.WriteStartArray("faults");
        foreach (WhatIfFault fault in faults)
        {
            json.WriteStartObject();
            json.WriteString("field", fault.Field);
            json.WriteString("text", fault.Text);
            json.WriteEndObject();
        }
        json.WriteEndArray();
    }

    private static string Json(Action<Utf8JsonWriter> write)
    {
        using var bytes = new MemoryStream();
        using (var json = new Utf8JsonWriter(bytes, Plain))
        {
            json.WriteStartObject();
            write(json);
            json.WriteEndObject();
        }
        return Encoding.UTF8.GetString(bytes.GetBuffer(), 0, (int)bytes.Length);
    }
}
