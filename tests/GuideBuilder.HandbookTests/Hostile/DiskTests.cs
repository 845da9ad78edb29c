using GuideBuilder.HandbookTests.Shell;
using GuideBuilder.HandbookTests.Support;
using GuideBuilder.Tests.Support;

namespace GuideBuilder.HandbookTests.Hostile;

/// <summary>Whichever call to the disk is the first to fail, and however it fails, the earlier handbook is whole, the message says what to do, and the next run leaves nothing beside the new one.</summary>
public sealed class DiskTests : IDisposable
{
    private const int Seed = 20261124;

    // No room, read only, no handle left, not allowed, input or output error; or the program is ended there. Numbers of POSIX.
    private static readonly string[] Ways = ["28", "30", "24", "13", "5", "kill"];

    private readonly Folder _folder = new();

    private readonly Folder _tools = new();

    public DiskTests()
    {
        _folder.Put("home.yaml", FaultTests.Small("handbook: {format: 1, id: our-home}"));
    }

    [Fact]
    public async Task Whatever_fails_first_the_earlier_handbook_is_whole_and_the_next_run_clears_up()
    {
        var breaking = await BuiltAsync();
        Assert.Equal(0, (await BindAsync(breaking, int.MaxValue, "0", "2026-11-24")).Exit);
        _folder.Put("book/notes/mine.txt", "ring on Monday");
        var calls = await CallsAsync(breaking);
        var random = new Random(Seed);
        TestContext.Current.TestOutputHelper?.WriteLine($"seed {Seed}, {calls} calls");
        for (var turn = 0; turn < Sizes.Of("breaks"); turn++)
        {
            var (at, way) = (random.Next(1, calls + 1), Ways[turn % Ways.Length]);
            var before = Bytes.Of(_folder.At("book"));

            var broken = await BindAsync(breaking, at, way, $"2027-02-{(turn % 28) + 1:00}");

            Holds(before, broken, way, $"call {at} of {calls} fails with {way}: exit {broken.Exit} {broken.Errors}");
        }

        Assert.Equal(0, (await BindAsync(breaking, int.MaxValue, "0", "2026-11-24")).Exit);
        Assert.Equal(["book", "home.yaml"], Directory.EnumerateFileSystemEntries(_folder.Path).Select(Path.GetFileName).Order(StringComparer.Ordinal));
        Assert.Equal("ring on Monday", await File.ReadAllTextAsync(_folder.At("book", "notes", "mine.txt"), TestContext.Current.CancellationToken));
    }

    [Fact]
    public async Task What_is_neither_file_nor_folder_is_kept_and_not_waited_for()
    {
        Assert.Equal(0, (await Handbooks.BindAsync(_folder.At("home.yaml"), _folder.At("book"))).Exit);
        Assert.Equal(0, (await Tool.RunAsync("mkfifo", _folder.At("book", "pipe"))).Exit);

        var bound = await Handbooks.BindAsync(_folder.At("home.yaml"), _folder.At("book")).WaitAsync(TimeSpan.FromMinutes(2), TestContext.Current.CancellationToken);

        Assert.Equal(0, bound.Exit);
        Assert.True(File.Exists(_folder.At("book", "pipe")));
    }

    [Fact]
    public async Task A_folder_that_another_run_is_writing_is_left_to_it()
    {
        await using (new FileStream(_folder.At(".book.guidebuilder-turn"), FileMode.Create, FileAccess.ReadWrite, FileShare.None))
        {
            var bound = await Handbooks.BindAsync(_folder.At("home.yaml"), _folder.At("book"));

            Assert.Equal((3, ""), (bound.Exit, bound.Output));
            Assert.Contains("HB4006", bound.Errors, StringComparison.Ordinal);
            Assert.False(Directory.Exists(_folder.At("book")));
        }

        Assert.Equal(0, (await Handbooks.BindAsync(_folder.At("home.yaml"), _folder.At("book"))).Exit);
        Assert.False(File.Exists(_folder.At(".book.guidebuilder-turn")));
    }

    [Theory]
    [InlineData("bind '{0}' --to /proc/book")]
    [InlineData("form --to /proc/form.html")]
    public async Task A_disk_that_can_only_be_read_is_said(string line)
    {
        var used = await Tool.RunAsync("/bin/sh", "-c", "\"$0\" " + string.Format(System.Globalization.CultureInfo.InvariantCulture, line, _folder.At("home.yaml")), Tool.GuideBuilder);

        Assert.Equal((3, ""), (used.Exit, used.Output));
        Assert.Contains("cannot be written", used.Errors, StringComparison.Ordinal);
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        _folder.Dispose();
        _tools.Dispose();
    }

    // Old or new, whole; a run that says it is done has done it; one that failed has said so in a line that names the folder.
    private void Holds(string[] before, Tool broken, string way, string what)
    {
        Assert.True(broken.Exit is 0 or 3 || (way == "kill" && broken.Exit == 137), what);
        Assert.True(broken.Exit != 3 || (broken.Errors.Contains("cannot be written", StringComparison.Ordinal) && broken.Errors.TrimEnd().Split('\n').Length == 1), what);
        Findings.AreNone(Bytes.Broken(_folder.At("book")).Select(b => $"{what}: {b} is not as listed"));
        Assert.True(broken.Exit != 3 || before.SequenceEqual(Bytes.Of(_folder.At("book"))), what + ": the earlier handbook has changed");
    }

    private async Task<string> BuiltAsync()
    {
        var library = _tools.At("breaking.so");
        var built = await Tool.RunAsync("/bin/sh", "-c", $"command -v gcc >/dev/null || exit 127; gcc -shared -fPIC -O1 -Wall -Werror -o '{library}' '{Repository.At("tests/GuideBuilder.HandbookTests/Hostile/breaking.c")}' -ldl");
        Assert.SkipWhen(built.Exit == 127 || !OperatingSystem.IsLinux(), "no gcc is installed, so no call to the disk can be made to fail");
        Assert.True(built.Exit == 0, built.Errors);
        return library;
    }

    private async Task<int> CallsAsync(string breaking)
    {
        Assert.Equal(0, (await BindAsync(breaking, int.MaxValue, "0", "2026-11-25")).Exit);
        return int.Parse(await File.ReadAllTextAsync(_tools.At("count")), System.Globalization.CultureInfo.InvariantCulture);
    }

    private Task<Tool> BindAsync(string breaking, int at, string way, string today) => Tool.RunWithAsync(
        new() { ["LD_PRELOAD"] = breaking, ["BREAK_IN"] = _folder.Path, ["BREAK_AT"] = at.ToString(System.Globalization.CultureInfo.InvariantCulture), ["BREAK_WITH"] = way, ["BREAK_COUNT"] = _tools.At("count") },
        Tool.GuideBuilder,
        "bind", _folder.At("home.yaml"), "--to", _folder.At("book"), "--edition", "neighbour", "--today", today);
}
