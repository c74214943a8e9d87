using System.Text.RegularExpressions;

namespace FlapAero.Weather;

/// <summary>The groups of the code form FM 15 METAR, each as it may be written.</summary>
internal static partial class MetarGroups
{
    /// <summary>Groups that a landing distance does not need: visibility, runway visual range, weather, cloud, wind shear, sea, runway state.</summary>
    public static bool IsPassedOver(string group) =>
        Visibility().IsMatch(group) || Runway().IsMatch(group) || Phenomenon().IsMatch(group) || Cloud().IsMatch(group) || Other().IsMatch(group);

    [GeneratedRegex(@"^[A-Z][A-Z0-9]{3}$")]
    public static partial Regex Station();

    [GeneratedRegex(@"^(0[1-9]|[12][0-9]|3[01])([01][0-9]|2[0-3])[0-5][0-9]Z$")]
    public static partial Regex Time();

    [GeneratedRegex(@"^(?<from>[0-9]{3}|VRB|///)(?<mean>P?[0-9]{2,3}|//)(G(?<gust>P?[0-9]{2,3}|//))?(?<unit>KT|MPS|KMH)$")]
    public static partial Regex Wind();

    [GeneratedRegex(@"^(?<first>[0-9]{3})V(?<second>[0-9]{3})$")]
    public static partial Regex Variation();

    [GeneratedRegex(@"^(?<air>M?[0-9]{2}|//)/(M?[0-9]{2}|//)?$")]
    public static partial Regex Temperature();

    [GeneratedRegex(@"^(?<kind>[QA])(?<value>[0-9]{4}|////)$")]
    public static partial Regex Pressure();

    [GeneratedRegex(@"^(CAVOK|[0-9]{4}(NDV|N|NE|E|SE|S|SW|W|NW)?|[PM]?[0-9]{1,2}SM|M?[0-9]/[0-9]{1,2}SM|[0-9]|////)$")]
    private static partial Regex Visibility();

    [GeneratedRegex(@"^R[0-9]{2}[LCR]?/[A-Z0-9/]{1,14}$")]
    private static partial Regex Runway();

    [GeneratedRegex(@"^(//|NSW|(\+|-|VC|RE)?(MI|BC|PR|DR|BL|SH|TS|FZ)?(DZ|RA|SN|SG|PL|GR|GS|UP|IC|BR|FG|FU|VA|DU|SA|HZ|PO|SQ|FC|SS|DS|PY){0,3})$")]
    private static partial Regex Phenomenon();

    [GeneratedRegex(@"^((FEW|SCT|BKN|OVC|///)([0-9]{3}|///)(CB|TCU|///)?|VV([0-9]{3}|///)|SKC|CLR|NSC|NCD)$")]
    private static partial Regex Cloud();

    [GeneratedRegex(@"^(WS|ALL|RWY([0-9]{2}[LCR]?)?|R[0-9]{2}[LCR]?|W(M?[0-9]{2}|//)/[SH][0-9/]{1,3}|R/SNOCLO)$")]
    private static partial Regex Other();
}
