using System.CommandLine;
using System.Globalization;
using System.Text;
using FlapAero.Files;
using FlapAero.Handouts;
using FlapAero.Handouts.Briefings;
using FlapAero.Handouts.NotebookForm;
using FlapAero.Handouts.Printing;
using FlapAero.Notebooks;
using UnitsNet;

namespace FlapAero.Cli;

/// <summary><c>flapaero brief</c>: one flight's landing without flaps on one sheet.</summary>
internal sealed class BriefCommand
{
    private const string Example =
        "brief --weight \"1050 kg\" --runway 24 --length \"1400 m\" --surface grass --elevation \"450 ft\" --qnh \"1018 hPa\" --temperature \"22 C\" --wind 210/12G20";

    private readonly Option<string?> _aeroplane = Given("--aeroplane", "FILE", "The aeroplane's file. Without it: the invented Trainer H4.");
    private readonly Option<string?> _weight = Needed("--weight", "MASS", "Mass at the landing, such as \"1050 kg\" or \"2300 lb\".");
    private readonly Option<string?> _runway = Needed("--runway", "NAME", "The runway, such as 24 or 06L; landing on 24 goes towards 240°.");
    private readonly Option<string?> _length = Needed("--length", "LENGTH", "Landing distance available, such as \"900 m\".");
    private readonly Option<string?> _surface = Needed("--surface", "SURFACE", $"One of {string.Join(", ", RunwaySurface.ByName.Keys)}.");
    private readonly Option<string?> _slope = Given("--slope", "SLOPE", "In the direction of landing, such as \"1.5 % down\". Without it: level.");
    private readonly Option<string?> _elevation = Needed("--elevation", "HEIGHT", "Elevation of the aerodrome, such as \"450 ft\".");
    private readonly Option<string?> _qnh = Given("--qnh", "PRESSURE", "QNH, such as \"1018 hPa\" or \"30.06 inHg\". This or --pressure-altitude.");
    private readonly Option<string?> _pressureAltitude = Given("--pressure-altitude", "HEIGHT", "In place of --qnh.");
    private readonly Option<string?> _temperature = Needed("--temperature", "TEMPERATURE", "Outside air, such as \"22 C\" or \"72 F\".");
    private readonly Option<string?> _wind = Needed("--wind", "WIND", "As reported, in the runway's north: 210/12, 210/12G20, 21012G20KT or calm.");
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
            _aeroplane, _weight, _runway, _length, _surface, _slope, _elevation, _qnh, _pressureAltitude, _temperature, _wind,
            _overThreshold, _lowestOverThreshold, _circuit, _spacing, _rightHand, _margin, _crosswind, _steps, _drills, _out, _pdf, _paper,
        };
        PathText.NotEmpty(_aeroplane, _out, _pdf);
        command.Validators.Add(parsed =>
        {
            if (parsed.GetValue(_steps) && parsed.GetValue(_drills))
                parsed.AddError("--steps, --drills: one of them; each is a page of its own in place of the sheet.");
        });
        command.SetAction(RunAsync);
        return command;
    }

    private async Task<int> RunAsync(ParseResult parsed, CancellationToken cancellationToken)
    {
        var arguments = new BriefArguments();
        BriefingRequest? request = Request(parsed, arguments);
        if (request is null) return await ListAsync("The flight is refused", arguments.Faults, ExitCode.WrongUsage);
        Outcome<Briefing, IReadOnlyList<string>> outcome = Briefing.For(request);
        if (!outcome.Happened) return await ListAsync("This flight cannot be briefed", outcome.Refusal!, ExitCode.CannotLand);

        if (FaultOfPlaces(parsed) is { } fault)
        {
            await _error.WriteLineAsync(fault);
            return ExitCode.WrongUsage;
        }

        Paper paper = parsed.GetValue(_paper) == "letter" ? Paper.Letter : Paper.A4;
        (string text, string html) = Sheet(parsed, outcome.Value, paper);
        try
        {
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

    private (string Text, string Html) Sheet(ParseResult parsed, Briefing briefing, Paper paper)
    {
        if (parsed.GetValue(_drills))
        {
            DrillSheet drills = DrillSheet.Of(briefing);
            return (drills.ToString(), BriefingPage.ToHtml(drills, paper));
        }

        if (parsed.GetValue(_steps))
        {
            ExerciseSheet exercise = ExerciseSheet.Of(briefing);
            return (exercise.ToString(), BriefingPage.ToHtml(exercise, paper));
        }

        BriefingSheet sheet = BriefingSheet.Of(briefing);
        return (sheet.ToString(), BriefingPage.ToHtml(sheet, paper));
    }

    private BriefingRequest? Request(ParseResult parsed, BriefArguments read)
    {
        string? Text(Option<string?> option) => parsed.GetValue(option);
        Length? LengthOf(Option<string?> option) => read.Length(option.Name, Text(option));

        Aeroplane? aeroplane = Aeroplane(Text(_aeroplane), read);
        Mass? mass = read.Mass(_weight.Name, Text(_weight));
        (string Name, Angle Direction)? runway = read.Runway(_runway.Name, Text(_runway));
        Length? available = LengthOf(_length), elevation = LengthOf(_elevation), pressureAltitude = LengthOf(_pressureAltitude);
        Length? overThreshold = LengthOf(_overThreshold), lowestOver = LengthOf(_lowestOverThreshold), circuit = LengthOf(_circuit), spacing = LengthOf(_spacing);
        RunwaySurface? surface = read.Surface(_surface.Name, Text(_surface));
        double? slope = read.Slope(_slope.Name, Text(_slope));
        if (Text(_qnh) is null == Text(_pressureAltitude) is null)
            read.Refuse("--qnh, --pressure-altitude: exactly one is needed; either says what the air weighs, both could disagree.");
        Air? air = read.Air(pressureAltitude, elevation, read.Pressure(_qnh.Name, Text(_qnh)), read.Temperature(_temperature.Name, Text(_temperature)));
        BriefingWind? wind = read.Wind(_wind.Name, Text(_wind));
        LandingMargin? margin = read.Margin(_margin.Name, Text(_margin));
        Speed? crosswind = read.Crosswind(_crosswind.Name, Text(_crosswind));
        Runway? strip = runway is { } r && available is { } a && surface is not null && slope is { } s && elevation is { } e
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
        if (aeroplane is not null && mass is { } weight) read.Made(_weight.Name, () => aeroplane.Configure(aeroplane.FlapsUp, weight));
        // Parts that are there make a flight; what it then says is not said yet.
        BriefingRequest? request = read.Faults.Count == 0 && aeroplane is not null && mass is { } m && strip is not null && air is not null && wind is not null
            ? read.Made("--aeroplane, --circuit, --spacing, --crosswind-limit, --over-threshold, --lowest-over-threshold", () => new BriefingRequest(
                aeroplane, m, strip, air, wind, circuit, spacing, parsed.GetValue(_rightHand) ? CircuitHand.Right : CircuitHand.Left, margin,
                crosswind, overThreshold, lowestOver))
            : null;
        return read.Faults.Count == 0 ? request : null;
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

    private static Option<string?> Needed(string name, string value, string description) =>
        new(name) { Description = description, HelpName = value, Required = true };
}
