namespace GuideBuilder.HandbookTests.Support;

/// <summary>A folder of a test's own, gone when the test is.</summary>
internal sealed class Folder : IDisposable
{
    public string Path { get; } = Directory.CreateTempSubdirectory("guidebuilder-test-").FullName;

    /// <summary>The path of a name in the folder.</summary>
    public string At(params string[] names) => System.IO.Path.Combine([Path, .. names]);

    /// <summary>Writes a text and gives its path.</summary>
    public string Put(string name, string text)
    {
        Directory.CreateDirectory(System.IO.Path.GetDirectoryName(At(name))!);
        File.WriteAllText(At(name), text);
        return At(name);
    }

    /// <inheritdoc/>
    public void Dispose() => Directory.Delete(Path, recursive: true);
}
