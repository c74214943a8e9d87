using System.Text.Json;
using FlapAero.Handouts.Lessons;
using FlapAero.Handouts.Tests;

namespace FlapAero.Jupyter.Tests;

/// <summary>A class opens its notebooks in the same minute, on one server.</summary>
[Collection<UsersOfTheServer>]
[Trait("Speed", "slow")]
public sealed class ManyKernelsTests(InstalledJupyter jupyter)
{
    private const int Students = 8;

    /// <summary>Starts kernels, asks each as soon as there is a line to it, and ends them.</summary>
    private const string Answers = """
        async (count, name, code) => {
          const headers = { 'X-XSRFToken': document.cookie.match(/_xsrf=([^;]*)/)[1] };
          const started = await Promise.all([...Array(count)].map(() =>
            fetch('/api/kernels', { method: 'POST', headers, body: JSON.stringify({ name }) }).then(answer => answer.json())));
          const answers = await Promise.all(started.map(kernel => new Promise((done, failed) => {
            const line = new WebSocket(`ws://${location.host}/api/kernels/${kernel.id}/channels?session_id=${kernel.id}`);
            line.onopen = () => line.send(JSON.stringify({
              channel: 'shell', parent_header: {}, metadata: {},
              header: { msg_id: kernel.id, session: kernel.id, username: '', msg_type: 'execute_request', version: '5.3' },
              content: { code, silent: false, store_history: true, user_expressions: {}, allow_stdin: false, stop_on_error: true } }));
            line.onmessage = event => {
              const { channel, msg_type, content } = JSON.parse(event.data);
              if (channel === 'iopub' && content.data) done(content.data['text/plain']);
              if (msg_type === 'error' || content.execution_state === 'dead') done(event.data);
            };
            line.onclose = () => failed(new Error('the line to a kernel broke'));
          })));
          await Promise.all(started.map(kernel => fetch('/api/kernels/' + kernel.id, { method: 'DELETE', headers })));
          return answers;
        }
        """;

    [Fact]
    public async Task Kernels_EightStartedAtOnce_AllAnswer()
    {
        // Set up before: else the first of them would do it while the others wait.
        await jupyter.SetUpAsync();
        await using Tab tab = await jupyter.FrontEnd.OpenTabAsync(await jupyter.FrontEnd.ServerAsync());

        JsonElement answers = await tab.Page.EvaluateFunctionAsync<JsonElement>(Answers, Students, LessonNotebook.KernelName, "(6 * 7).ToString()")
            .WaitAsync(TimeSpan.FromMinutes(5), TestContext.Current.CancellationToken);

        Assert.Equal(Enumerable.Repeat("42", Students), answers.EnumerateArray().Select(answer => answer.GetString()));
    }
}
