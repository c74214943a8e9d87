using System.Globalization;
using AngleSharp.Dom;
using FlapAero.Charts;
using FlapAero.Notebooks;

namespace FlapAero.Handouts.Pages;

/// <summary>
/// The place for an answer on a student's page. With a script it checks the answer against its seal; without one, and on
/// paper, it is a line to write on.
/// </summary>
internal static class TryIt
{
    private const string NameStart = "answer-";

    /// <summary>Said on every page that checks answers.</summary>
    public const string Note =
        "<aside class=\"facts note\" aria-label=\"About the checks\"><p>This page checks your answers by itself, without a network. It does not hold them in a form that can be read; whoever is "
        + "determined can still find them by trying every value. It is for practice, not for an examination.</p></aside>\n";

    /// <summary>Shown where a script is there that keeps what is typed; the script says whether the browser lets it.</summary>
    public const string Kept =
        "<aside class=\"facts typed\" aria-label=\"What you type\" hidden><p><span role=\"status\"></span> <button type=\"button\">Forget what I typed</button></p></aside>\n";

    /// <summary>The id that the field of an answer asks for, from the id of its cell.</summary>
    public static string NameOf(string cell) => NameStart + cell;

    /// <summary>All names that belong to an answer, from its first field; none where the field is not of this kind.</summary>
    public static IReadOnlyList<string> NamesOf(IElement field) =>
        (field.GetAttribute("type") == "radio" ? field.GetAttribute("name") : field.Id) is { } name && name.StartsWith(NameStart, StringComparison.Ordinal)
            ? [name, name + "-unit", name + "-verdict", name + "-reason"]
            : [];

    /// <summary>A line to write on that nothing checks.</summary>
    public static string Line(string id, string label, string unit) => Line(id, label, unit, "");

    /// <summary>The place for a prediction, which is compared with what the model gives further down.</summary>
    /// <param name="id">An id of the page for the input.</param>
    /// <param name="label">What is to be written in.</param>
    /// <param name="unit">Its unit.</param>
    /// <param name="prediction">The prediction's name in the lesson.</param>
    public static string Prediction(string id, string label, string unit, string prediction) =>
        Line(id, label, unit, $" data-prediction=\"{HtmlText.Escape(prediction)}\"");

    // A unit stays beside its field, however narrow the page.
    private static string Line(string id, string label, string unit, string data) =>
        $"<p class=\"write-in\"><label>{HtmlText.Escape(label)} <span class=\"kept\"><input id=\"{id}\" type=\"text\" inputmode=\"decimal\" autocomplete=\"off\"{data}> {HtmlText.Escape(unit)}</span></label></p>\n";

    /// <summary>The control of a number that can be changed; hidden until a script is there that can change it.</summary>
    /// <param name="id">An id of the page for the control.</param>
    /// <param name="label">What is changed.</param>
    /// <param name="unit">Its unit.</param>
    /// <param name="values">The numbers, rising.</param>
    /// <param name="start">Which of them the page shows first.</param>
    public static string Values(string id, string label, string unit, IReadOnlyList<string> values, int start)
    {
        string sign = unit.Length == 0 || unit == "°" ? unit : QuantityText.NoBreakSpace + unit;
        string shown = HtmlText.Escape(values[start] + sign);
        return string.Create(CultureInfo.InvariantCulture, $"""
            <div class="plot-control values" data-values="{HtmlText.Escape(string.Join(';', values.Select(value => value + sign)))}" hidden><label><span>{HtmlText.Escape(label)}</span> <input id="{id}" type="range" min="0" max="{values.Count - 1}" step="1" value="{start}" autocomplete="off" aria-valuetext="{shown}"></label>
            <output aria-live="off">{shown}</output></div>

            """);
    }

    /// <summary>A number with its check.</summary>
    /// <param name="id">An id of the page for the input.</param>
    /// <param name="label">What is to be written in.</param>
    /// <param name="key">What is right.</param>
    public static string Number(string id, string label, AnswerKey key)
    {
        string unit = key.Sign.Length == 0 ? "" : string.Create(CultureInfo.InvariantCulture, $" <span class=\"unit\" id=\"{id}-unit\">{HtmlText.Escape(key.Sign)}</span>");
        return string.Create(CultureInfo.InvariantCulture, $"""
            <form class="try" data-kind="number" data-seal="{key.Seal}">
            <p class="write-in"><label for="{id}">{HtmlText.Escape(label)}</label> <span class="kept"><input id="{id}" type="text" inputmode="decimal" autocomplete="off" aria-describedby="{(unit.Length > 0 ? id + "-unit " : "")}{id}-verdict">{unit}</span> <button type="submit" hidden>Check<span class="apart">: {HtmlText.Escape(label)}</span></button></p>
            <p class="verdict" id="{id}-verdict" role="status" aria-live="polite"></p>
            </form>

            """);
    }

    /// <summary>Makes the options of a problem into buttons to choose from, and puts the check round them.</summary>
    public static void Choice(IElement problem, string id, AnswerKey key)
    {
        IElement options = problem.QuerySelector(".options")!;
        IDocument document = problem.Owner!;
        int at = 0;
        foreach (IElement option in options.Children.ToArray())
        {
            string inside = option.ChildElementCount == 1 && option.FirstElementChild!.LocalName == "p" ? option.FirstElementChild.InnerHtml : option.InnerHtml;
            option.InnerHtml = string.Create(CultureInfo.InvariantCulture, $"<label><input type=\"radio\" name=\"{id}\" value=\"{OptionLetters.Of(at++)}\"> <span>{inside}</span></label>");
        }
        IElement form = document.CreateElement("form");
        form.ClassName = "try";
        form.SetAttribute("data-kind", "choice");
        form.SetAttribute("data-seal", key.Seal);
        options.Replace(form);
        IElement group = document.CreateElement("fieldset");
        group.InnerHtml = $"<legend class=\"apart\">Your answer: {HtmlText.Escape(key.What)}</legend>";
        group.Append(options);
        form.Append(group);
        if (problem.QuerySelector("p.reason") is { } reason)
        {
            reason.ClassName = "reason";
            reason.InnerHtml = $"<label for=\"{id}-reason\">{reason.TextContent.Trim()}</label><textarea id=\"{id}-reason\" rows=\"3\"></textarea><span class=\"rules\" aria-hidden=\"true\"></span>";
            form.Append(reason);
        }
        IElement button = document.CreateElement("p");
        button.ClassName = "press";
        button.InnerHtml = $"<button type=\"submit\" hidden>Check<span class=\"apart\">: {HtmlText.Escape(key.What)}</span></button>";
        IElement verdict = document.CreateElement("p");
        verdict.ClassName = "verdict";
        verdict.Id = id + "-verdict";
        verdict.SetAttribute("role", "status");
        verdict.SetAttribute("aria-live", "polite");
        form.Append(button, verdict);
    }
}
