using System.Diagnostics;

namespace GuideBuilder.HandbookTests.Support;

/// <summary>A program run to its end, and what it said.</summary>
internal sealed record Tool(int Exit, string Output, string Errors)
{
    /// <summary>The build that stands beside these tests: its culture can be real, and it can be asked which libraries it loaded.</summary>
    public static readonly string Managed = Path.Combine(AppContext.BaseDirectory, "guidebuilder");

    /// <summary>What GUIDEBUILDER names (a native build, say), else <see cref="Managed"/>.</summary>
    public static readonly string GuideBuilder = Environment.GetEnvironmentVariable("GUIDEBUILDER") is { Length: > 0 } named ? named : Managed;

    /// <summary>Runs guidebuilder with these arguments and nothing on its standard input.</summary>
    public static Task<Tool> GuideBuilderAsync(params string[] arguments) => RunAsync(GuideBuilder, arguments);

    /// <summary>Runs guidebuilder with these arguments and types these lines into it.</summary>
    public static Task<Tool> TypingAsync(IEnumerable<string> lines, params string[] arguments) => RunWithAsync([], string.Concat(lines.Select(l => l + "\n")), GuideBuilder, arguments);

    /// <summary>Runs any program with nothing on its standard input.</summary>
    public static Task<Tool> RunAsync(string program, params string[] arguments) => RunWithAsync([], program, arguments);

    /// <summary>Runs any program with these variables in its environment besides the test's own, and nothing on its standard input.</summary>
    public static Task<Tool> RunWithAsync(Dictionary<string, string> variables, string program, params string[] arguments) => RunWithAsync(variables, "", program, arguments);

    private static async Task<Tool> RunWithAsync(Dictionary<string, string> variables, string input, string program, string[] arguments)
    {
        var start = new ProcessStartInfo(program, arguments)
        {
            RedirectStandardInput = true,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        };
        foreach (var (name, value) in variables)
        {
            start.Environment[name] = value;
        }

        using var process = Process.Start(start)!;
        var output = process.StandardOutput.ReadToEndAsync();
        var errors = process.StandardError.ReadToEndAsync();
        try
        {
            await process.StandardInput.WriteAsync(input);
            process.StandardInput.Close();
        }
        catch (IOException)
        {
            // The program ended before it had read all; what it said is what counts.
        }

        await process.WaitForExitAsync();
        return new(process.ExitCode, await output, await errors);
    }
}
