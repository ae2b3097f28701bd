using System.CommandLine;
using System.Text;
using System.Text.Json;
using System.Threading.Channels;
using DayBrief.Service.Infrastructure;
using DayBrief.Soundings;
using Microsoft.AspNetCore.Mvc;

namespace DayBrief.Service.Commands;

/// <summary>Works through many inputs on all cores and prints one line each, in their order, whatever finishes first. Memory is
/// bounded by the inputs in work.</summary>
internal sealed class Batch(ParseResult parsed, string? resume)
{
    private const int BufferBytes = 1 << 16;

    private static readonly int InWork = 4 * Environment.ProcessorCount;

    /// <param name="inputs">Paths in order.</param>
    /// <param name="line">The line of an input; refusals go to standard error.</param>
    /// <param name="stopping">Stops between two inputs.</param>
    /// <returns>The exit code.</returns>
    public async Task<int> RunAsync(IReadOnlyList<string> inputs, Func<string, Task<string>> line, CancellationToken stopping)
    {
        var done = new DoneInputs(resume);
        var left = inputs.Where(input => !done.Holds(input)).ToList();
        var work = Channel.CreateBounded<(string Input, Task<Outcome> Outcome)>(InWork);
        var feeding = FeedAsync(left, line, work.Writer, stopping);
        await using var progress = new BatchProgress(left.Count);
        await using var output = Output();
        var exit = 0;
        await foreach (var (input, outcome) in work.Reader.ReadAllAsync(stopping))
        {
            var (text, problem) = await outcome;
            if (problem is not null)
            {
                exit = CommandInput.Refused;
                progress.Clear();
                await parsed.InvocationConfiguration.Error.WriteLineAsync(JsonSerializer.Serialize(problem, Json.Line));
            }
            else
            {
                await output.WriteLineAsync(text.AsMemory(), stopping);
            }

            await done.AddAsync(input, output);
            progress.Step();
        }

        await feeding;
        await done.FlushAsync(output);
        return exit;
    }

    private static async Task FeedAsync(
        List<string> inputs, Func<string, Task<string>> line, ChannelWriter<(string, Task<Outcome>)> work, CancellationToken stopping)
    {
        try
        {
            foreach (var input in inputs)
            {
                // The place is taken before the work begins, so that never more are begun than have room.
                await work.WaitToWriteAsync(stopping);
                await work.WriteAsync((input, Task.Run(() => OutcomeAsync(input, line), stopping)), stopping);
            }

            work.Complete();
        }
        catch (OperationCanceledException stopped)
        {
            work.Complete(stopped);
        }
    }

    private static async Task<Outcome> OutcomeAsync(string input, Func<string, Task<string>> line)
    {
        try
        {
            return new(await line(input), null);
        }
        catch (InvalidSoundingException refused)
        {
            return new(null, Problem.Of(refused, input));
        }
        catch (InvalidInputException refused)
        {
            return new(null, Problem.Of(refused));
        }
    }

    /// <summary>Standard output in large pieces: the console's own writer passes each line on in many small ones.</summary>
    private TextWriter Output() => ReferenceEquals(parsed.InvocationConfiguration.Output, Console.Out)
        ? new StreamWriter(Console.OpenStandardOutput(), new UTF8Encoding(encoderShouldEmitUTF8Identifier: false), BufferBytes) { NewLine = "\n" }
        : TextWriter.Synchronized(new Kept(parsed.InvocationConfiguration.Output));

    private sealed record Outcome(string? Line, ProblemDetails? Problem);

    /// <summary>A writer of somebody else's, which is not closed with us.</summary>
    private sealed class Kept(TextWriter writer) : TextWriter
    {
        public override Encoding Encoding => writer.Encoding;

        public override void Write(char value) => writer.Write(value);

        public override void Write(string? value) => writer.Write(value);
    }
}
