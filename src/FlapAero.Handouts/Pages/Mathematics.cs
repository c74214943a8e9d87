using Jint;
using Jint.Native;
using Jint.Runtime;

namespace FlapAero.Handouts.Pages;

/// <summary>TeX to MathML with Temml, run in an engine of this process: pages need neither fonts nor scripts for their maths.</summary>
/// <remarks>One instance a build: reading Temml takes longer than a hundred equations. Not for use from several threads.</remarks>
internal sealed class Mathematics : IDisposable
{
    private readonly Engine _engine = new();
    private readonly JsValue _render;

    public Mathematics()
    {
        _engine.Execute(Assets.Temml);
        _render = _engine.Evaluate(
            "(function (tex, display) { return temml.renderToString(tex, { displayMode: display, wrap: display ? 'none' : 'tex', throwOnError: true, trust: false }); })");
    }

    /// <summary>The MathML of a formula.</summary>
    /// <param name="tex">The formula, without delimiters.</param>
    /// <param name="display">Whether it stands on a line of its own.</param>
    /// <param name="where">Lesson and cell, for the message.</param>
    /// <exception cref="HandoutException">The formula is no TeX that Temml knows.</exception>
    public string ToMathMl(string tex, bool display, string where)
    {
        try
        {
            return _engine.Invoke(_render, tex, display).AsString();
        }
        catch (JavaScriptException e)
        {
            throw new HandoutException($"{where}: the formula \"{tex.Trim()}\" cannot be set: {e.Message.ReplaceLineEndings(" ").Trim()}", e);
        }
    }

    public void Dispose() => _engine.Dispose();
}
