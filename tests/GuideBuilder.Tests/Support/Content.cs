using GuideBuilder.Model;
using GuideBuilder.Reading;
using NodaTime;
using Assembly = GuideBuilder.Reading.Assembly;

namespace GuideBuilder.Tests.Support;

/// <summary>The guidance of content/ as the reading stage sees it, with every fault found, even where a fault would keep it from being bound.</summary>
internal static class Content
{
    private static readonly FaultList Found = new();

    /// <summary>The guidance, read once.</summary>
    public static Guidance Guidance { get; } = Read();

    /// <summary>Its faults, in the order found.</summary>
    public static IEnumerable<Fault> Faults => Found.Found;

    private static Guidance Read()
    {
        var files = ContentFiles.Read([.. Files()], "content", Found);
        var desk = new Desk(IdScan.Of(files, Found), Found, new LocalDate(2026, 11, 24));
        return new Assembly(files, desk).Read();
    }

    private static IEnumerable<SourceText> Files() =>
        from file in Directory.EnumerateFiles(Repository.At("content"), "*", SearchOption.AllDirectories)
        let name = Repository.Short(file)
        orderby name
        select new SourceText(name, File.ReadAllBytes(file));
}
