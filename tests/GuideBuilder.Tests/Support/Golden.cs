using System.Text;

namespace GuideBuilder.Tests.Support;

/// <summary>Compares output, byte for byte, with a file under Goldens. GOLDEN=write accepts what came out; where CI is set nothing is written.</summary>
internal static class Golden
{
    private const string Folder = "tests/GuideBuilder.Tests/Goldens/";

    /// <summary>Fails unless the golden file (a path under Goldens, with forward slashes) holds exactly this text.</summary>
    public static void Matches(string name, string actual)
    {
        var file = Repository.At(Folder + name);
        if (Accepts(Environment.GetEnvironmentVariable("GOLDEN"), Environment.GetEnvironmentVariable("CI")))
        {
            Directory.CreateDirectory(Path.GetDirectoryName(file)!);
            File.WriteAllBytes(file, Encoding.UTF8.GetBytes(actual));
        }

        Assert.True(File.Exists(file), $"{Folder}{name} does not exist. Run the tests with GOLDEN=write, then read what was written.");

        // Assert.Equal shows where two texts part; decoding again keeps a byte order mark and line ends as they are.
        Assert.Equal(Encoding.UTF8.GetString(File.ReadAllBytes(file)), actual);
    }

    /// <summary>Whether what came out becomes the golden file: only where a person asked for it.</summary>
    internal static bool Accepts(string? golden, string? ci) => golden == "write" && string.IsNullOrEmpty(ci);
}
