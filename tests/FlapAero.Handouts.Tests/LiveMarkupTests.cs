using FlapAero.Charts;
using FlapAero.Handouts.Pages;

namespace FlapAero.Handouts.Tests;

/// <summary>Nothing of a cell's output runs, fetches or hides in a page.</summary>
public sealed class LiveMarkupTests
{
    [Theory]
    [InlineData("<img src=\"data:image/png;base64,AAAA\" onerror=\"alert(1)\">", "onerror")]
    [InlineData("<svg onload=\"alert(1)\"></svg>", "onload")]
    [InlineData("<svg/onload=alert(1)>", "onload")]
    [InlineData("<p ONCLICK=\"alert(1)\">a</p>", "onclick")]
    [InlineData("<details ontoggle=alert(1) open>a</details>", "ontoggle")]
    [InlineData("<figure class=\"plot\"><div onpointerdown=\"alert(1)\"></div></figure>", "onpointerdown")]
    [InlineData("<a href=\"javascript:alert(1)\">a</a>", "javascript:")]
    [InlineData("<a href=\" JaVa\tScript:alert(1)\">a</a>", "run as a script")]
    [InlineData("<a href=\"&#1;javascript&colon;alert(1)\">a</a>", "run as a script")]
    [InlineData("<svg><a xlink:href=\"javascript:alert(1)\"><text>a</text></a></svg>", "run as a script")]
    [InlineData("<a href=\"data:text/html,<script>alert(1)</script>\">a</a>", "run as a script")]
    [InlineData("<svg><script>alert(1)</script></svg>", "script")]
    [InlineData("<script type=\"application/json\" src=\"x.js\"></script>", "script")]
    [InlineData("<script type=\"module\">alert(1)</script>", "script")]
    [InlineData("<svg><set attributeName=\"onmouseover\" to=\"alert(1)\"/></svg>", "<set>")]
    [InlineData("<svg><animate attributeName=\"href\" to=\"javascript:alert(1)\"/></svg>", "<animate>")]
    [InlineData("<svg><foreignObject><p>a</p></foreignObject></svg>", "foreignObject")]
    [InlineData("<iframe srcdoc=\"<p>a</p>\"></iframe>", "<iframe>")]
    [InlineData("<object data=\"x\"></object>", "<object>")]
    [InlineData("<embed src=\"x\">", "<embed>")]
    [InlineData("<noscript><p title=\"</noscript><img onerror=alert(1)>\"></noscript>", "<noscript>")]
    [InlineData("<img srcset=\"data:image/png,a 1x, http://example.org/a 2x\">", "srcset")]
    [InlineData("<svg><image href=\"http://example.org/a\"/></svg>", "href")]
    [InlineData("<svg><use xlink:href=\"http://example.org/a#b\"/></svg>", "href")]
    [InlineData("<button formaction=\"http://example.org\">a</button>", "formaction")]
    public void ToHtml_LiveOutput_IsRefusedInWords(string html, string words)
    {
        string message = Assert.Throws<HandoutException>(() => OnAPage(html)).Message;

        Assert.StartsWith("here: ", message, StringComparison.Ordinal);
        Assert.Contains(words, message, StringComparison.OrdinalIgnoreCase);
    }

    [Theory]
    [InlineData("<p>a\u001b[31mred\u001b[0m</p>", "<p>ared</p>")]
    [InlineData("<p>a&#27;[31mred&#x1b;[0m</p>", "<p>ared</p>")]
    [InlineData("<p title=\"a\u001b]0;title\u0007b\">c\u0008d</p>", "<p title=\"ab\">cd</p>")]
    [InlineData("<p>a\u009b1mb\u007f</p>", "<p>ab</p>")]
    [InlineData("<p>a\u202eb</p>", "<p>ab</p>")]
    [InlineData("<p>a<!-- never seen -->b</p>", "<p>ab</p>")]
    [InlineData("<pre>a\n\tb</pre>", "<pre>a\n\tb</pre>")]
    [InlineData("<p>51.1&nbsp;kt \u2212 1\u202f000 ft</p>", "<p>51.1&nbsp;kt \u2212 1\u202f000 ft</p>")]
    public void ToHtml_HiddenCharacters_AreLeftOut(string html, string page) => Assert.Equal(page, OnAPage(html).Trim());

    [Fact]
    public void Escape_TerminalsCommands_AreLeftOut() =>
        Assert.Equal("name &lt;b&gt;.json", HtmlText.Escape("na\u001b[2Jme \u001b]8;;http://example.org\u001b\\<b>\u001b]8;;\u001b\\.json"));

    [Theory]
    [InlineData("<p>Write onload or javascript: in words, and class=\"x\".</p>")]
    [InlineData("<a href=\"#part\">a</a><svg><use href=\"#a\"></use></svg>")]
    [InlineData("<img alt=\"\" src=\"data:image/png;base64,AAAA\">")]
    [InlineData("<script type=\"application/json\">{\"a\":1}</script>")]
    public void ToHtml_DeadOutput_IsTaken(string html) => Assert.Equal(html, OnAPage(html).Trim());

    [Fact]
    public void ToHtml_OurFigure_IsTaken()
    {
        Figure figure = new Figure("Stall", Axis.Of("bank", "φ", "°"), Axis.Of("stall speed", "V_S", "kt"))
            .Line("flaps up", [0, 30, 60], [51.1, 54.9, 72.3]).Caption("Caption.").Finding("At 60° it is 72.3 kt.");

        Assert.Contains("plot-data", OnAPage(figure.ToHtml()), StringComparison.Ordinal);
    }

    private static string OnAPage(string html)
    {
        using var mathematics = new Mathematics();
        return Fragment.Parse(html, "here").ToHtml(new IdRegistry(), mathematics);
    }
}
