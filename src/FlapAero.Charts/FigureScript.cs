using System.IO.Compression;
using System.Text;

namespace FlapAero.Charts;

/// <summary>What a browser needs to draw the figures of a page or of a notebook, without any network.</summary>
public static class FigureScript
{
    private static readonly Lazy<string> Made = new(Make);

    /// <summary>A script comment: whose plotly.js is and on what terms. It goes wherever the script goes, packed or not.</summary>
    public static string PlotlyNotice =>
        """
        /*!
        plotly.js (basic - minified) v2.28.0, Copyright 2012-2024, Plotly, Inc. All rights reserved. The MIT licence:

        Permission is hereby granted, free of charge, to any person obtaining a copy
        of this software and associated documentation files (the "Software"), to deal
        in the Software without restriction, including without limitation the rights
        to use, copy, modify, merge, publish, distribute, sublicense, and/or sell
        copies of the Software, and to permit persons to whom the Software is
        furnished to do so, subject to the following conditions:

        The above copyright notice and this permission notice shall be included in all
        copies or substantial portions of the Software.

        THE SOFTWARE IS PROVIDED "AS IS", WITHOUT WARRANTY OF ANY KIND, EXPRESS OR
        IMPLIED, INCLUDING BUT NOT LIMITED TO THE WARRANTIES OF MERCHANTABILITY,
        FITNESS FOR A PARTICULAR PURPOSE AND NONINFRINGEMENT. IN NO EVENT SHALL THE
        AUTHORS OR COPYRIGHT HOLDERS BE LIABLE FOR ANY CLAIM, DAMAGES OR OTHER
        LIABILITY, WHETHER IN AN ACTION OF CONTRACT, TORT OR OTHERWISE, ARISING FROM,
        OUT OF OR IN CONNECTION WITH THE SOFTWARE OR THE USE OR OTHER DEALINGS IN THE
        SOFTWARE.

        What others wrote in it is listed in docs/THIRD-PARTY.md of FlapAero.
        */

        """.ReplaceLineEndings("\n");

    /// <summary>
    /// plotly.js under its notice: the bundle that draws lines and bars, which are all that figures have. It is of the version that
    /// Plotly.NET writes for, and weighs a third of the whole.
    /// </summary>
    public static string Plotly => PlotlyNotice + Read("plotly-basic.min.js");

    /// <summary>
    /// The script that declares the function <c>drawFigures(bringPlotly)</c>: it draws each figure of the document when it is about
    /// to be seen, and from then on those that are pushed on <c>window.flapaeroFigures</c>. What it is given brings plotly.js.
    /// </summary>
    public static string Figures => Read("figures.js");

    /// <summary>
    /// All of it in one script for a page or a notebook: plotly.js packed under its notice, and what unpacks it and draws. A browser
    /// that cannot unpack shows the still drawings. It is safe inside a script element.
    /// </summary>
    public static string Start => Made.Value;

    /// <summary>The style of figures and their controls.</summary>
    public static string Style => Read("figures.css");

    private static string Make() => $$"""
        {{PlotlyNotice.TrimEnd()}}
        (() => {
        {{HtmlText.InScript(Figures).Trim()}}
        {{HtmlText.InScript(Read("unpack.js")).Trim()}}
        if (typeof DecompressionStream !== "undefined") drawFigures(() => unpackPlotly("{{Packed(Plotly)}}"));
        })();
        """.ReplaceLineEndings("\n");

    private static string Packed(string script)
    {
        using var packed = new MemoryStream();
        using (var gzip = new GZipStream(packed, CompressionLevel.SmallestSize, leaveOpen: true)) gzip.Write(Encoding.UTF8.GetBytes(script));
        return Convert.ToBase64String(packed.GetBuffer(), 0, (int)packed.Length);
    }

    private static string Read(string name)
    {
        using Stream stream = typeof(FigureScript).Assembly.GetManifestResourceStream("assets/" + name)
            ?? throw new InvalidOperationException($"FlapAero.Charts carries no {name}; build it again.");
        using var reader = new StreamReader(stream);
        return reader.ReadToEnd().Replace("\r\n", "\n", StringComparison.Ordinal);
    }
}
