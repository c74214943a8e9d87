using System.Globalization;
using System.Text;
using FlapAero.Notebooks;
using FlapAero.Notebooks.Seals;

namespace FlapAero.Handouts.Tests;

/// <summary>A lesson with every role and every kind of output that the contract between notebooks and pages names.</summary>
internal static class WholeLesson
{
    public const string Answer = "61.4";
    public const string Solution = "Multiply the stall speed in the turn by the margin";
    public const string InstructorWords = "Ask aloud who has seen the needle shake";
    public const string AnswerCode = "var mine = 61.4";

    /// <summary>A check against a seal has no key: its page leads the student to the notebook.</summary>
    private static readonly string Seal = SealText.Of(NumberSeal.Of(
        "The slowest safe turn", "", UnitsNet.Scalar.FromAmount(61.4), UnitsNet.Scalar.FromAmount(0.5), [new Mistake(50, "Too low: did the bank count?")]));

    public static NotebookText Make(string outcome = "passed")
    {
        string check = outcome switch
        {
            "passed" => $"lesson.CheckSealed({Answer}, \"{Seal}\")",
            "wrong" => $"lesson.CheckSealed(50.0, \"{Seal}\")",
            "open" => $"lesson.CheckSealed(0.0, \"{Seal}\")",
            _ => "HTML(\"It is right.\")",
        };
        return new NotebookText("Stall speed in the turn to final", 4)
            .Markdown("opening", "opening", "Opening", """
                # Stall speed in the turn to final

                Afterwards you can say how much of the margin a turn takes, and how much the flaps give back.
                Taken for granted: lift, weight, load factor. Caution: a training aid.

                - fifty minutes
                - a pencil
                """)
            .Code("setup", "setup", "Setup", NotebookText.Setup)
            .Markdown("scenario", "scenario", "A gusty afternoon", """
                An invented field with a short runway, a wind across it, and a pilot who turns to final late. The bank grows
                from 20° to 45° as the runway slides past the nose. In a level turn the load factor is $n = 1/\cos\varphi$, so

                $$
                V_{S\varphi} = \frac{V_S}{\sqrt{\cos\varphi}}
                $$

                | flaps | *C*<sub> is no tag here | stall speed | reference speed, as the margin of 1.3 gives it, calibrated |
                |---|---|--:|--:|
                | up | 1.45 | 51.1 kt | 66.4 kt |
                | 35° | 2.05 | 43.0 kt | 55.9 kt |
                """)
            .Markdown("predict", "predict", "How much does the turn take?", "In a level turn at 45° of bank the stall speed grows. By how many knots, with flaps up?")
            .Code("commit", "commit", "Your guess", "var guess = 0.0;", "The stall speed grows by", "kt")
            .Html("compute", "figure", "Stall speed against bank", Figure("Stall speed in a level turn"))
            .Html("compute", "compared", "Your guess against it", "<p class=\"compared\">No prediction written down: the stall speed grows by 9.7 kt.</p>")
            .Html("explain", "said", "Why so little at thirty degrees", """
                <div class="said"><p>At 30° the load factor is <span class="math">\(n = 1.155\)</span>: the stall speed rises by 7 per cent, from <span class="quantity">51.1 kt</span> to <span class="quantity">54.9 kt</span>.</p>
                <div class="math">\[ \frac{V_{S\varphi}}{V_S} = \sqrt{\frac{1}{\cos 30^\circ}} = 1.075 \]</div></div>
                """)
            .Html("explain", "table", "The numbers", """
                <table class="numbers"><caption>Stall speeds</caption><thead><tr><th scope="col">bank</th><th scope="col">flaps up</th><th scope="col">flaps 20°</th><th scope="col">flaps 35°</th></tr></thead>
                <tbody><tr><th scope="row">0°</th><td>51.1 kt</td><td>46.0 kt</td><td>43.0 kt</td></tr><tr><th scope="row">30°</th><td>54.9 kt</td><td>49.4 kt</td><td>46.2 kt</td></tr><tr><th scope="row">45°</th><td>60.8 kt</td><td>54.7 kt</td><td>51.1 kt</td></tr></tbody></table>
                """)
            .Html("answer", "answer", "The slowest safe turn", $"<span class=\"quantity\">{Answer} kt</span>", "Slowest speed", "kt", "var mine = 0.0; // your answer in knots")
            .Code("check", "check", "Check the slowest turn", check)
            .Html("change", "change", "Sixty degrees of bank", Figure("Stall speed in a level turn"))
            .Code("problem", "problem-1", "A heavier day", Problem("A heavier day", Answer))
            .Code("problem", "problem-2", "Flaps half way", Problem("Flaps half way", "58.2"))
            .Markdown("instructor", "plan", "Lesson plan", $"""
                **Objective.** The student states the margin in a turn. {InstructorWords}.

                ### Common errors

                - Takes the bank for the cause and not the load factor.
                """)
            .Markdown("sources", "sources", "Sources", "- [MODEL] The model of this project, its equations ([references](../docs/references.md)).\n- The margin of 1.3 is common practice: see <https://example.org/margin> or [lesson 5](05-other.ipynb).");
    }

    private static string Problem(string title, string answer) => $$$""""
        lesson.Problem("{{{title}}}", $$"""The stall speed is {{Speed.FromKnots(53)}} and the bank 35°. What is $1.1\,V_{S\varphi}$?""", ["First the load factor."],
            Speed.FromKnots({{{answer}}}), Speed.FromKnots(0.5), $$"""{{{Solution}}}: $V = 1.1 \cdot 53 / \sqrt{\cos 35^\circ}$.""")
        """";

    private static string Figure(string title)
    {
        var x = new List<int>();
        var up = new List<string>();
        var down = new List<string>();
        var rows = new StringBuilder();
        var pathUp = new StringBuilder();
        var pathDown = new StringBuilder();
        for (int bank = 0; bank <= 60; bank += 5)
        {
            double factor = 1 / Math.Sqrt(Math.Cos(bank * Math.PI / 180));
            x.Add(bank);
            up.Add((51.1 * factor).ToString("0.0", CultureInfo.InvariantCulture));
            down.Add((43.0 * factor).ToString("0.0", CultureInfo.InvariantCulture));
            rows.Append(CultureInfo.InvariantCulture, $"<tr><th scope=\"row\">{bank}°</th><td>{up[^1]}</td><td>{down[^1]}</td></tr>");
            pathUp.Append(CultureInfo.InvariantCulture, $"{60 + bank * 9.0:0},{340 - (51.1 * factor - 40) * 8:0.0} ");
            pathDown.Append(CultureInfo.InvariantCulture, $"{60 + bank * 9.0:0},{340 - (43.0 * factor - 40) * 8:0.0} ");
        }
        return $$$"""
            <figure class="plot" id="fig-stall-speed-in-a-level-turn"><div class="plot-drawing" role="img" aria-label="With flaps up the stall speed grows from 51.1 kt at 0° to 72.3 kt at 60° of bank."><svg viewBox="0 0 720 400" font-family="sans-serif" font-size="15"><g stroke="#bbb"><path d="M60 340H640"/><path d="M60 180H640"/></g><text x="350" y="385" text-anchor="middle">angle of bank (°)</text><text x="52" y="345" text-anchor="end">40</text><text x="52" y="185" text-anchor="end">60</text><polyline fill="none" stroke="#0072B2" stroke-width="2.5" points="{{{pathUp}}}"/><polyline fill="none" stroke="#D55E00" stroke-width="2.5" stroke-dasharray="8 4" points="{{{pathDown}}}"/><text x="606" y="85">flaps up</text><text x="606" y="180">flaps 35°</text></svg></div>
            <script type="application/json" class="plot-data">{"data":[{"type":"scatter","mode":"lines","name":"flaps up","x":[{{{string.Join(',', x)}}}],"y":[{{{string.Join(',', up)}}}],"line":{"color":"#0072B2","width":3}},{"type":"scatter","mode":"lines","name":"flaps 35°","x":[{{{string.Join(',', x)}}}],"y":[{{{string.Join(',', down)}}}],"line":{"color":"#D55E00","width":3,"dash":"dash"}}],"layout":{"showlegend":false,"margin":{"l":70,"r":90,"t":20,"b":60},"xaxis":{"title":{"text":"angle of bank (°)"},"fixedrange":true},"yaxis":{"title":{"text":"stall speed <i>V</i><sub>S</sub> (kt CAS)"},"fixedrange":true},"annotations":[{"x":60,"y":{{{up[^1]}}},"text":"flaps up","showarrow":false,"xanchor":"left"},{"x":60,"y":{{{down[^1]}}},"text":"flaps 35°","showarrow":false,"xanchor":"left"}]},"config":{}}</script>
            <figcaption>{{{title}}}, with the flaps up and at 35°.</figcaption><details class="plot-numbers"><summary>The numbers in this figure</summary><table><thead><tr><th scope="col">bank</th><th scope="col">flaps up (kt)</th><th scope="col">flaps 35° (kt)</th></tr></thead><tbody>{{{rows}}}</tbody></table></details></figure>
            """;
    }
}
