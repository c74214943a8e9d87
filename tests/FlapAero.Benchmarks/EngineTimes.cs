using System.Globalization;
using PuppeteerSharp;

namespace FlapAero.Benchmarks;

/// <summary>How long the pages of the folder <c>engine</c> keep their reader waiting, beside what was promised.</summary>
internal static class EngineTimes
{
    private const string Rested = "document.documentElement.dataset.whatIf === 'rested'";

    /// <summary>Browsers tell of tasks from 50 ms on.</summary>
    private const string Watch = """
        window.tasks = [];
        new PerformanceObserver((list) => { for (const task of list.getEntries()) window.tasks.push(task.duration); }).observe({ type: "longtask", buffered: true });
        new MutationObserver((_, it) => {
          if (!document.documentElement.dataset.whatIf) return;
          window.wasLive = performance.now();
          it.disconnect();
        }).observe(document, { subtree: true, attributes: true, attributeFilter: ["data-what-if"] });
        """;

    /// <summary>From a slider's event to the drawing of both landings, for many steps of every slider in turn.</summary>
    private const string Steps = """
        async (rounds) => {
          const place = document.querySelector(".both .plot-drawing"), took = [];
          const sliders = ["along", "across", "gust", "speed", "path", "height", "mass", "temperature", "altitude", "round", "braking", "slope"]
            .map((key) => document.getElementById(key + "-slider"));
          for (let round = 0; round < rounds; round++)
            for (const slider of sliders) {
              const began = performance.now();
              const drawn = new Promise((then) => new MutationObserver((_, it) => { it.disconnect(); then(); }).observe(place, { childList: true }));
              if (round % 2 === 0) slider.stepUp(); else slider.stepDown();
              slider.dispatchEvent(new Event("input", { bubbles: true }));
              if (await Promise.race([drawn.then(() => true), new Promise((then) => setTimeout(() => then(false), 2000))])) took.push(performance.now() - began);
            }
          return took;
        }
        """;

    /// <summary>Measures all of it.</summary>
    /// <param name="folder">The folder <c>engine</c> beside the handouts.</param>
    /// <param name="output">Where the table goes.</param>
    /// <param name="error">Where it says that there is no such folder.</param>
    internal static async Task<int> PrintAsync(string folder, TextWriter output, TextWriter error)
    {
        string whatIf = Path.Combine(folder, "what-if.html");
        if (!File.Exists(whatIf))
        {
            await error.WriteLineAsync($"There is no page {whatIf}; make it with: handouts --engine");
            return 2;
        }

        await using IBrowser browser = await PageTimes.LaunchAsync();
        await output.WriteLineAsync($"{"",-52}{"reached",12}{"promised",12}");
        await WhatIfAsync(browser, whatIf, output);
        await LessonsAsync(browser, folder, output);
        return 0;
    }

    private static async Task WhatIfAsync(IBrowser browser, string file, TextWriter output)
    {
        await using IPage page = await OpenAsync(browser, file);
        await UntilAsync(page, Rested);
        await LineAsync(output, "what-if: live after", await page.EvaluateExpressionAsync<double>("wasLive"), 4000);
        // The interpreter warms to what it does often.
        await page.EvaluateFunctionAsync<double[]>(Steps, 8);
        await page.EvaluateExpressionAsync<double[]>("tasks.splice(0)");
        double[] steps = await page.EvaluateFunctionAsync<double[]>(Steps, 16);
        await LineAsync(output, $"what-if: a slider's step, median of {steps.Length}", Quantile(steps, 0.5), 16);
        await LineAsync(output, "what-if: a slider's step, 95th percentile", Quantile(steps, 0.95), 33);
        await UntilAsync(page, Rested);
        await page.EvaluateExpressionAsync<double[]>("tasks.splice(0)");
        double all = await page.EvaluateFunctionAsync<double>("""
            async () => {
              const began = performance.now();
              document.querySelector("[data-do=spread]").click();
              while (!document.querySelector(".spread").textContent.includes("of 300 landings")) await new Promise((then) => setTimeout(then, 20));
              return performance.now() - began;
            }
            """);
        await output.WriteLineAsync(string.Create(CultureInfo.InvariantCulture, $"{"what-if: 300 landings of both sides drawn in",-52}{all,9:0} ms{"none",12}"));
        double[] tasks = await page.EvaluateExpressionAsync<double[]>("tasks.splice(0)");
        await LineAsync(output, "what-if: longest task meanwhile (0: none of 50 ms)", tasks.DefaultIfEmpty(0).Max(), 50);
    }

    private static async Task LessonsAsync(IBrowser browser, string folder, TextWriter output)
    {
        var first = new List<double>();
        var later = new List<double>();
        int failed = 0;
        foreach (string file in Directory.GetFiles(folder, "??-*.html").Order(StringComparer.Ordinal))
        {
            await using IPage page = await OpenAsync(browser, file);
            first.Add(await page.EvaluateFunctionAsync<double>("""
                async () => {
                  const began = performance.now();
                  document.querySelector("[data-do=all]").click();
                  while (!document.querySelector(".run-code[data-ran]")) await new Promise((then) => setTimeout(then, 10));
                  return performance.now() - began;
                }
                """));
            await UntilAsync(page, "[...document.querySelectorAll('.run-code')].every(c => c.dataset.ran) || document.querySelector('.run-code[data-ran=failed]') !== null");
            later.AddRange((await page.EvaluateExpressionAsync<double[]>("[...document.querySelectorAll('.run-code[data-took]')].map(c => Number(c.dataset.took))")).Skip(1));
            failed += await page.EvaluateExpressionAsync<int>("document.querySelectorAll('.run-code[data-ran=failed]').length");
        }

        await LineAsync(output, $"lessons: to the first output, median of {first.Count}", Quantile(first, 0.5), 6000);
        await LineAsync(output, "lessons: to the first output, slowest", first.Max(), 6000);
        await LineAsync(output, $"lessons: a later cell, median of {later.Count}", Quantile(later, 0.5), 400);
        await output.WriteLineAsync(string.Create(CultureInfo.InvariantCulture, $"{"lessons: a later cell, 95th percentile",-52}{Quantile(later, 0.95),9:0} ms{"none",12}"));
        await output.WriteLineAsync(string.Create(CultureInfo.InvariantCulture, $"{"lessons: cells that failed",-52}{failed,12}{0,12}"));
    }

    private static async Task<IPage> OpenAsync(IBrowser browser, string file)
    {
        IPage page = await browser.NewPageAsync();
        page.DefaultTimeout = page.DefaultNavigationTimeout = 0;
        await page.SetViewportAsync(new ViewPortOptions { Width = 1280, Height = 900 });
        await page.EvaluateExpressionOnNewDocumentAsync(Watch);
        await page.GoToAsync(new Uri(Path.GetFullPath(file)).AbsoluteUri);
        return page;
    }

    private static async Task UntilAsync(IPage page, string isSo)
    {
        while (!await page.EvaluateExpressionAsync<bool>(isSo)) await Task.Delay(100);
    }

    private static Task LineAsync(TextWriter output, string what, double took, double promised) => output.WriteLineAsync(
        string.Create(CultureInfo.InvariantCulture, $"{what,-52}{took,9:0} ms{promised,9:0} ms{(took > promised ? "  later" : "")}"));

    private static double Quantile(IEnumerable<double> of, double share)
    {
        double[] sorted = [.. of.Order()];
        return sorted.Length == 0 ? double.NaN : sorted[(int)Math.Min(sorted.Length - 1, share * sorted.Length)];
    }
}
