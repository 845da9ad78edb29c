using System.Diagnostics;

namespace GuideBuilder.Cli.Disk;

/// <summary>An installed browser of the Chromium family, which prints pages to PDF. None is ever downloaded.</summary>
internal static class Browser
{
    // By the names under which they stand in PATH, then where the other two systems put them.
    private static readonly ImmutableArray<string> Names = ["chromium", "chromium-browser", "google-chrome", "google-chrome-stable", "microsoft-edge", "brave-browser", "chrome", "msedge"];

    private static readonly ImmutableArray<string> Places =
    [
        "/Applications/Google Chrome.app/Contents/MacOS/Google Chrome",
        "/Applications/Microsoft Edge.app/Contents/MacOS/Microsoft Edge",
        "/Applications/Chromium.app/Contents/MacOS/Chromium",
        @"C:\Program Files\Google\Chrome\Application\chrome.exe",
        @"C:\Program Files (x86)\Microsoft\Edge\Application\msedge.exe",
    ];

    // Nothing is asked of a network, and the pages' own tags and headings become those of the PDF.
    private static readonly ImmutableArray<string> Arguments =
    [
        "--headless", "--disable-gpu", "--no-first-run", "--disable-background-networking", "--disable-component-update", "--disable-sync", "--disable-extensions",
        "--no-pdf-header-footer", "--generate-pdf-document-outline",
    ];

    /// <summary>How long one file may take, in milliseconds.</summary>
    private const int Patience = 180_000;

    /// <summary>The named program, or the first that is installed; none is a fault.</summary>
    internal static string Find(string? named)
    {
        if (named is not null)
        {
            return Path.Exists(named) ? named : InPath([named]) ?? throw new ShellException(ShellFaults.BrowserMissing(named));
        }

        return InPath(Names) ?? Places.FirstOrDefault(File.Exists) ?? throw new ShellException(ShellFaults.NoBrowser());
    }

    /// <summary>The pages as PDF, each under its own name: laid out in a folder of their own first, because a browser reads from disk.</summary>
    internal static IEnumerable<(string Name, ReadOnlyMemory<byte> Bytes)> Print(string program, IReadOnlyList<(string Name, ReadOnlyMemory<byte> Bytes)> files, IEnumerable<string> pages)
    {
        var folder = Directory.CreateTempSubdirectory("guidebuilder-pdf-").FullName;
        try
        {
            foreach (var (name, bytes) in files)
            {
                File.WriteAllBytes(Path.Combine(folder, name), bytes.ToArray());
            }

            return [.. pages.Select(page => (Path.ChangeExtension(page, ".pdf"), One(program, folder, page)))];
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    private static ReadOnlyMemory<byte> One(string program, string folder, string page)
    {
        var to = Path.Combine(folder, Path.ChangeExtension(page, ".pdf"));
        IEnumerable<string> all =
        [
            .. Arguments,
            .. OperatingSystem.IsLinux() && Environment.IsPrivilegedProcess ? ["--no-sandbox"] : Array.Empty<string>(),
            $"--user-data-dir={Path.Combine(folder, "browser")}", $"--print-to-pdf={to}", new Uri(Path.Combine(folder, page)).AbsoluteUri,
        ];
        Run(program, all);
        return File.Exists(to) ? File.ReadAllBytes(to) : throw new ShellException(ShellFaults.BrowserFailed(program, page));
    }

    private static void Run(string program, IEnumerable<string> arguments)
    {
        try
        {
            using var process = Process.Start(new ProcessStartInfo(program, arguments) { RedirectStandardOutput = true, RedirectStandardError = true })!;
            process.OutputDataReceived += static (_, _) => { };
            process.ErrorDataReceived += static (_, _) => { };
            process.BeginOutputReadLine();
            process.BeginErrorReadLine();
            if (!process.WaitForExit(Patience))
            {
                process.Kill(entireProcessTree: true);
            }
        }
        catch (System.ComponentModel.Win32Exception problem)
        {
            throw new ShellException(ShellFaults.CannotRead(program, problem.Message.TrimEnd('.')));
        }
    }

    private static string? InPath(IEnumerable<string> names)
    {
        var folders = (Environment.GetEnvironmentVariable("PATH") ?? "").Split(Path.PathSeparator, StringSplitOptions.RemoveEmptyEntries);
        var endings = OperatingSystem.IsWindows() ? new[] { ".exe" } : [""];
        return names.SelectMany(n => folders.SelectMany(f => endings.Select(e => Path.Combine(f, n + e)))).FirstOrDefault(File.Exists);
    }
}
