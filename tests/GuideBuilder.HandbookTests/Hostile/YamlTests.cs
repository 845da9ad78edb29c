using System.Collections.Concurrent;
using System.Diagnostics;
using System.Globalization;
using GuideBuilder.HandbookTests.Support;
using GuideBuilder.Tests.Support;

namespace GuideBuilder.HandbookTests.Hostile;

/// <summary>The program itself on files that are made to break a reader, in processes that may take 30 s and 256 MB: a large file in one of its own, the small ones in one together. Each file has a fault at its place.</summary>
public sealed class YamlTests : IDisposable
{
    private const int MostMegabytes = 256;
    private const int Large = 500_000;
    private static readonly TimeSpan Longest = TimeSpan.FromSeconds(30);
    private readonly Folder _folder = new();

    [Fact]
    public async Task A_file_made_to_break_the_reader_is_a_fault_within_30_seconds_and_256_megabytes()
    {
        var files = HostileYaml.All.ToArray();
        foreach (var file in files)
        {
            await File.WriteAllBytesAsync(At(file.Name), file.Bytes, TestContext.Current.CancellationToken);
        }

        var found = new ConcurrentBag<string>();
        var runs = files.Where(f => f.Bytes.Length >= Large).Select(f => new[] { (f.Name, f.Code) }).Append([.. files.Where(f => f.Bytes.Length < Large).Select(f => (f.Name, f.Code))]);
        await Parallel.ForEachAsync(runs, new ParallelOptions { MaxDegreeOfParallelism = 2 }, async (run, _) =>
        {
            foreach (var wrong in await WrongAsync([.. run.Select(f => (At(f.Name), f.Code))]))
            {
                found.Add($"{run[0].Name}: {wrong}");
            }
        });

        Findings.AreNone(found.Order(StringComparer.Ordinal));
    }

    private string At(string name) => _folder.At(name + ".yaml");

    private static async Task<string[]> WrongAsync((string Path, string Code)[] files)
    {
        // The limit of the heap ends a run that would go beyond it; the rest of the process is looked at from outside.
        var start = new ProcessStartInfo(Tool.GuideBuilder, ["check", .. files.Select(f => f.Path), "--today", Handbooks.Today]) { RedirectStandardOutput = true, RedirectStandardError = true };
        start.Environment["DOTNET_GCHeapHardLimit"] = "0x" + (MostMegabytes << 20).ToString("X", CultureInfo.InvariantCulture);
        using var process = Process.Start(start)!;
        var (output, errors) = (process.StandardOutput.ReadToEndAsync(), process.StandardError.ReadToEndAsync());
        var most = await MostAsync(process);
        if (!process.HasExited)
        {
            process.Kill();
            return ["was not done"];
        }

        var lines = (await errors).Split('\n', StringSplitOptions.RemoveEmptyEntries);
        return
        [
            .. process.ExitCode == 1 && (await output).Length == 0 ? [] : new[] { $"ended with {process.ExitCode}" },
            .. files.Where(f => !lines.Any(l => l.StartsWith(f.Path + ":", StringComparison.Ordinal) && l.Contains($"[{f.Code}", StringComparison.Ordinal))).Select(f => $"does not say {f.Code} of {f.Path}"),
            .. lines.All(l => l.Length < 1000 && !l.Contains("   at ", StringComparison.Ordinal)) ? [] : new[] { "says too much" },
            .. most <= MostMegabytes ? [] : new[] { $"took {most} MB" },
        ];
    }

    // The most memory that the process ever held, in megabytes, as far as the system says; 0 where it does not.
    private static async Task<int> MostAsync(Process process)
    {
        var (most, clock) = (0, Stopwatch.StartNew());
        while (!process.HasExited && clock.Elapsed < Longest)
        {
            most = Math.Max(most, Held(process.Id));
            await Task.WhenAny(process.WaitForExitAsync(), Task.Delay(10));
        }

        return most;
    }

    private static int Held(int process)
    {
        try
        {
            var line = File.ReadLines($"/proc/{process}/status").FirstOrDefault(l => l.StartsWith("VmHWM:", StringComparison.Ordinal));
            return line is null ? 0 : int.Parse(string.Concat(line.Where(char.IsAsciiDigit)), CultureInfo.InvariantCulture) >> 10;
        }
        catch (IOException)
        {
            return 0;
        }
    }

    /// <inheritdoc/>
    public void Dispose() => _folder.Dispose();
}
