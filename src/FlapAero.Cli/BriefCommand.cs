using System.CommandLine;
using System.CommandLine.Parsing;
using System.Globalization;
using System.Text;
using FlapAero.Files;
using FlapAero.Handouts;
using FlapAero.Handouts.Briefings;
using FlapAero.Handouts.NotebookForm;
using FlapAero.Handouts.Printing;
using FlapAero.Handouts.Schools;
using FlapAero.Schools;
using UnitsNet;

namespace FlapAero.Cli;

/// <summary><c>flapaero brief</c>: one flight's landing without flaps on one sheet.</summary>
internal sealed class BriefCommand
{
    private const string Example =
        "brief --weight \"1050 kg\" --runway 24 --length \"1400 m\" --surface grass --elevation \"450 ft\" --qnh \"1018 hPa\" --temperature \"22 C\" --wind 210/12G20";

    private readonly Option<string?> _aeroplane = Given("--aeroplane", "FILE", "The aeroplane's file. Without it: the invented Trainer H4.");
    private readonly Option<string?> _school = Given("--school", "FILE", "The school's file: aerodromes, weather, rules, name and marks; docs/school.md.");
    private readonly Option<string?> _aerodrome = Given(
        "--aerodrome", "NAME", "One of the school's. Without it: the METAR's, or the school's first.");

    private readonly Option<string?> _day = Given("--day", "NAME", "A day of the school's weather.");
    private readonly Option<string?> _metar = Given(
        "--metar", "METAR", "Wind, temperature and QNH as the airfield reports them; --wind, --temperature and --qnh go before it.");

    private readonly Option<string?> _weight = Given("--weight", "MASS", "Mass at the landing, such as \"1050 kg\" or \"2300 lb\". With a school and without it: the aeroplane's greatest.");
    private readonly Option<string?> _runway = Given("--runway", "NAME", "The runway, such as 24 or 06L; landing on 24 goes towards 240°. With a school one of the aerodrome's; without it the one with the most headwind.");
    private readonly Option<string?> _length = Given("--length", "LENGTH", "Landing distance available, such as \"900 m\".");
    private readonly Option<string?> _surface = Given("--surface", "SURFACE", $"One of {string.Join(", ", RunwaySurface.ByName.Keys)}.");
    private readonly Option<string?> _slope = Given("--slope", "SLOPE", "In the direction of landing, such as \"1.5 % down\". Without it: level.");
    private readonly Option<string?> _elevation = Given("--elevation", "HEIGHT", "Elevation of the aerodrome, such as \"450 ft\".");
    private readonly Option<string?> _qnh = Given("--qnh", "PRESSURE", "QNH, such as \"1018 hPa\" or \"30.06 inHg\". This or --pressure-altitude.");
    private readonly Option<string?> _pressureAltitude = Given("--pressure-altitude", "HEIGHT", "In place of --qnh.");
    private readonly Option<string?> _temperature = Given("--temperature", "TEMPERATURE", "Outside air, such as \"22 C\" or \"72 F\".");
    private readonly Option<string?> _wind = Given("--wind", "WIND", "As reported, in the runway's north: 210/12, 210/12G20, 21012G20KT or calm.");
    private readonly Option<string?> _overThreshold = Given("--over-threshold", "HEIGHT", "Wheels over the threshold. Without it: 50 ft.");
    private readonly Option<string?> _lowestOverThreshold = Given(
        "--lowest-over-threshold", "HEIGHT", "How low the school lets a student aim, where the float needs it. Without it: 30 ft.");

    private readonly Option<string?> _circuit = Given("--circuit", "HEIGHT", "Circuit height above the runway. Without it: 1000 ft.");
    private readonly Option<string?> _spacing = Given("--spacing", "LENGTH", "Downwind from the runway. Without it: 0.9 nmi.");
    private readonly Option<bool> _rightHand = new("--right-hand") { Description = "A right-hand circuit. Without it: left-hand." };
    private readonly Option<string?> _margin = Given(
        "--margin", "FACTOR",
        "Factor on the landing distance, 1 to 3. Without it: 1/0.7 = 1.43, a stop within 70 % of the runway (EU 965/2012, CAT.POL.A.330).");

    private readonly Option<string?> _crosswind = Given(
        "--crosswind-limit", "SPEED", "The instructor's own limit, such as \"12 kt\"; the lower of it and the aeroplane's file counts.");

    private readonly Option<bool> _steps = new("--steps") { Description = "The exercise step by step, in place of the sheet." };
    private readonly Option<bool> _drills = new("--drills") { Description = "The drills for too fast, too high, a bounce and the like, in place of the sheet." };
    private readonly Option<string?> _out = Given("--out", "FILE.html", "Writes the sheet as a page.");
    private readonly Option<string?> _pdf = Given("--pdf", "FILE.pdf", "Writes the sheet as a PDF; needs an installed Chromium, Chrome or Edge.");
    private readonly Option<string> _paper = new Option<string>("--paper") { Description = "The paper of page and PDF.", DefaultValueFactory = _ => "a4" }.AcceptOnlyFromAmong("a4", "letter");

    private readonly TextWriter _output;
    private readonly TextWriter _error;
    private readonly string _workingFolder;

    private BriefCommand(TextWriter output, TextWriter error, string workingFolder) =>
        (_output, _error, _workingFolder) = (output, error, workingFolder);

    public static Command Create(TextWriter output, TextWriter error, string workingFolder) => new BriefCommand(output, error, workingFolder).Command();

    private Command Command()
    {
        var command = new Command("brief",
            "The sheet for one flight that lands without flaps: speeds, engine speeds, circuit, distances with flaps and without, gates, calls. "
            + $"For example: {Example}. Options may stand in a file, one word a line: brief @flight.txt. "
            + "Exit code 0: the sheet is there, whatever it says; 2: the call or a file is wrong; 3: the flight cannot be briefed, with the reasons; "
            + "1: a file could not be written. A training aid: the approved manual, local rules and a qualified instructor decide about a flight.")
        {
            _aeroplane, _school, _aerodrome, _day, _metar, _weight, _runway, _length, _surface, _slope, _elevation, _qnh, _pressureAltitude, _temperature, _wind,
            _overThreshold, _lowestOverThreshold, _circuit, _spacing, _rightHand, _margin, _crosswind, _steps, _drills, _out, _pdf, _paper,
        };
        PathText.NotEmpty(_aeroplane, _school, _out, _pdf);
        command.Validators.Add(parsed =>
        {
            if (parsed.GetValue(_steps) && parsed.GetValue(_drills))
                parsed.AddError("--steps, --drills: one of them; each is a page of its own in place of the sheet.");
            foreach (Option<string?> option in Missing(parsed)) parsed.AddError($"Option '{option.Name}' is required.");
            foreach (Option<string?> option in (Option<string?>[])[_aerodrome, _day])
            {
                if (parsed.GetResult(option) is not null && parsed.GetResult(_school) is null)
                    parsed.AddError($"{option.Name} is given without --school; it names something in the school's file.");
            }

            if (parsed.GetResult(_day) is not null && parsed.GetResult(_metar) is not null)
                parsed.AddError("--day, --metar: one of them; each says what the weather is.");
        });
        command.SetAction(RunAsync);
        return command;
    }

    private async Task<int> RunAsync(ParseResult parsed, CancellationToken cancellationToken)
    {
        var arguments = new BriefArguments();
        School? school = School(parsed.GetValue(_school), arguments);
        var flight = new SchoolFlight(school, arguments.Refuse);
        BriefingRequest? request = Request(parsed, arguments, school, flight);
        if (request is null) return await ListAsync("The flight is refused", arguments.Faults, ExitCode.WrongUsage);
        Outcome<Briefing, IReadOnlyList<string>> outcome = Briefing.For(request);
        if (!outcome.Happened) return await ListAsync("This flight cannot be briefed", outcome.Refusal!, ExitCode.CannotLand);

        if (FaultOfPlaces(parsed) is { } fault)
        {
            await _error.WriteLineAsync(fault);
            return ExitCode.WrongUsage;
        }

        bool isLetter = parsed.GetResult(_paper) is { Implicit: false } || school?.Paper is null
            ? parsed.GetValue(_paper) == "letter" : school.Paper == SchoolPaper.Letter;
        Paper paper = isLetter ? Paper.Letter : Paper.A4;
        try
        {
            SchoolMarks? marks = school is null ? null : SchoolMarks.Of(school, Full(parsed.GetValue(_school)!));
            BriefingKind kind = parsed.GetValue(_drills) ? BriefingKind.Drills : parsed.GetValue(_steps) ? BriefingKind.Exercise : BriefingKind.Sheet;
            (string text, string html) = BriefingPaper.Of(kind, outcome.Value, paper, marks, flight.Runway, Notes(parsed, flight, request));
            List<(string Path, byte[] Bytes)> files = [];
            if (parsed.GetValue(_out) is { } page) files.Add((Full(page), new UTF8Encoding(false).GetBytes(html)));
            if (parsed.GetValue(_pdf) is { } pdf)
            {
                await using PdfPrinter printer = await PdfPrinter.StartAsync(cancellationToken);
                files.Add((Full(pdf), await printer.PrintAsync(html, paper, cancellationToken)));
            }

            WholeFile.WriteAll(files);
            await _output.WriteAsync(text);
            foreach ((string path, _) in files) await _output.WriteLineAsync($"Written: {path}");
            return ExitCode.Done;
        }
        catch (Exception e) when (e is HandoutException or BrowserMissingException)
        {
            await _error.WriteLineAsync(e.Message);
            return ExitCode.Failed;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            await _error.WriteLineAsync($"The sheet cannot be written, and what stood there before still does: {e.Message}");
            return ExitCode.Failed;
        }
    }

    /// <summary>What a flight needs where no school gives it, and of the weather what no METAR gives either.</summary>
    private IEnumerable<Option<string?>> Missing(CommandResult parsed)
    {
        if (parsed.GetResult(_school) is not null) return [];
        Option<string?>[] weather = parsed.GetResult(_metar) is null ? [_temperature, _wind] : [];
        return ((Option<string?>[])[_weight, _runway, _length, _surface, _elevation, .. weather]).Where(option => parsed.GetResult(option) is null);
    }

    private BriefingRequest? Request(ParseResult parsed, BriefArguments read, School? school, SchoolFlight flight)
    {
        string? Text(Option<string?> option) => parsed.GetValue(option);
        Length? LengthOf(Option<string?> option) => read.Length(option.Name, Text(option));

        Aeroplane? aeroplane = Aeroplane(Text(_aeroplane), read);
        // A school's file that is refused is one fault; what hangs on it is not complained about.
        bool hasSchool = Text(_school) is not null;
        Mass? mass = read.Mass(_weight.Name, Text(_weight)) ?? (hasSchool && Text(_weight) is null ? aeroplane?.MaximumMass : null);
        Length? available = LengthOf(_length), elevation = LengthOf(_elevation), pressureAltitude = LengthOf(_pressureAltitude);
        Length? overThreshold = LengthOf(_overThreshold), lowestOver = LengthOf(_lowestOverThreshold), circuit = LengthOf(_circuit), spacing = LengthOf(_spacing);
        RunwaySurface? surface = read.Surface(_surface.Name, Text(_surface));
        double? slope = Text(_slope) is null && hasSchool ? null : read.Slope(_slope.Name, Text(_slope));
        BriefingWind? own = read.Wind(_wind.Name, Text(_wind));
        Temperature? temperature = read.Temperature(_temperature.Name, Text(_temperature));
        Pressure? qnh = read.Pressure(_qnh.Name, Text(_qnh));
        LandingMargin? margin = Text(_margin) is null && school is not null ? school.Rules.Margin : read.Margin(_margin.Name, Text(_margin));
        Speed? crosswind = read.Crosswind(_crosswind.Name, Text(_crosswind)) ?? school?.Circuit.CrosswindLimit;
        Runway? strip;
        if (hasSchool)
        {
            if (school is not null) flight.Choose(Text(_aerodrome), Text(_runway), Text(_day), Text(_metar), own, needsRunway: true);
            if (school is { Aerodromes.Count: 0 }) read.Refuse($"{_school.Name}: {school.Name} has no aerodrome; write one under \"aerodromes\" in its file.");
            strip = flight.Runway is { } named ? read.Made("--length, --slope, --elevation", () => named.Runway with
            {
                LengthAvailable = available ?? named.Runway.LengthAvailable,
                Surface = surface ?? named.Runway.Surface,
                Slope = slope ?? named.Runway.Slope,
                Elevation = elevation ?? named.Runway.Elevation,
            }) : null;
        }
        else
        {
            (string Name, Angle Direction)? runway = read.Runway(_runway.Name, Text(_runway));
            if (Text(_metar) is { } report && runway is { } on) flight.TakeWind(report, on.Direction, needsWind: own is null);
            strip = runway is { } r && available is { } a && surface is not null && slope is { } s && elevation is { } e
                ? read.Made("--length, --slope, --elevation", () => new Runway
                {
                    Name = r.Name,
                    Direction = r.Direction,
                    LengthAvailable = a,
                    Surface = surface,
                    Slope = s,
                    Elevation = e,
                })
                : null;
        }

        if (Text(_qnh) is not null && pressureAltitude is not null || (Text(_qnh) is null && Text(_pressureAltitude) is null && Text(_metar) is null && Text(_day) is null))
            read.Refuse("--qnh, --pressure-altitude: exactly one is needed; either says what the air weighs, both could disagree.");
        (temperature, qnh, BriefingWind? wind) = (temperature ?? flight.Temperature, qnh ?? flight.Qnh, own ?? flight.Wind);
        Air? air = read.Air(pressureAltitude, strip?.Elevation ?? elevation, qnh, temperature);
        if (read.Faults.Count == 0)
        {
            if (temperature is null) read.Refuse($"{_temperature.Name} is needed: neither a METAR nor a day gives the temperature.");
            if (wind is null) read.Refuse($"{_wind.Name} is needed: neither a METAR nor a day gives the wind.");
            if (qnh is null && pressureAltitude is null) read.Refuse($"{_qnh.Name} is needed: neither a METAR nor a day gives the pressure.");
        }

        if (aeroplane is not null && mass is { } weight) read.Made(_weight.Name, () => aeroplane.Configure(aeroplane.FlapsUp, weight));
        CircuitHand hand = parsed.GetValue(_rightHand) ? CircuitHand.Right : flight.Runway?.Hand ?? CircuitHand.Left;
        // Parts that are there make a flight; what it then says is not said yet.
        BriefingRequest? request = read.Faults.Count == 0 && aeroplane is not null && mass is { } m && strip is not null && air is not null && wind is not null
            ? read.Made("--aeroplane, --circuit, --spacing, --crosswind-limit, --over-threshold, --lowest-over-threshold", () => new BriefingRequest(
                aeroplane, m, strip, air, wind, circuit ?? school?.Circuit.Height, spacing ?? school?.Circuit.Spacing, hand, margin, crosswind,
                overThreshold, lowestOver ?? school?.Circuit.LowestThresholdHeight, school?.Rules))
            : null;
        return read.Faults.Count == 0 ? request : null;
    }

    /// <summary>How what nobody named was chosen, for the sheet.</summary>
    private List<(string Term, string Fact)> Notes(ParseResult parsed, SchoolFlight flight, BriefingRequest request)
    {
        List<(string Term, string Fact)> notes = [.. flight.Notes];
        if (parsed.GetValue(_weight) is null)
            notes.Add(("Weight", $"None is given; it is the greatest of {request.Aeroplane.Name}."));
        return notes;
    }

    private School? School(string? file, BriefArguments read)
    {
        if (file is null) return null;
        try
        {
            return FlapAero.School.Read(Full(file));
        }
        catch (AeroplaneFileException refused)
        {
            read.Refuse($"{_school.Name}: {refused.Message}");
            return null;
        }
    }

    private Aeroplane? Aeroplane(string? file, BriefArguments read)
    {
        if (file is null) return DemoAeroplanes.TrainerH4;
        try
        {
            return AeroplaneFile.Read(Full(file));
        }
        catch (AeroplaneFileException refused)
        {
            read.Refuse($"{_aeroplane.Name}: {refused.Message}");
            return null;
        }
    }

    private async Task<int> ListAsync(string what, IReadOnlyList<string> faults, int code)
    {
        await _error.WriteLineAsync(string.Create(CultureInfo.InvariantCulture, $"{what}, and nothing was written ({faults.Count} {(faults.Count == 1 ? "reason" : "reasons")}):"));
        foreach (string fault in Listing.Capped(faults)) await _error.WriteLineAsync("  " + fault.Replace("\n", "\n  ", StringComparison.Ordinal));
        return code;
    }

    private string Full(string path) => Path.GetFullPath(path, _workingFolder);

    /// <summary>What stands where a file is wanted and must not be replaced; before a browser is started for it.</summary>
    private string? FaultOfPlaces(ParseResult parsed)
    {
        foreach (Option<string?> option in (Option<string?>[])[_out, _pdf])
        {
            if (parsed.GetValue(option) is not { } path) continue;
            try
            {
                WholeFile.Check(Full(path));
            }
            catch (UnfitFileException e)
            {
                return $"{option.Name}: {Full(path)} is not written: {e.Message}.";
            }
        }

        return null;
    }

    private static Option<string?> Given(string name, string value, string description) => new(name) { Description = description, HelpName = value };
}
