namespace GuideBuilder.Tests.Support;

/// <summary>The folder that holds the solution. Found by walking up, because a deterministic build hides where its source stood.</summary>
internal static class Repository
{
    public static string Root { get; } = Find(AppContext.BaseDirectory);

    /// <summary>The full name of a file or folder, given from the root with forward slashes.</summary>
    public static string At(string path) => Path.Combine(Root, path.Replace('/', Path.DirectorySeparatorChar));

    /// <summary>A full name as people write it: from the root, with forward slashes.</summary>
    public static string Short(string fullName) => Path.GetRelativePath(Root, fullName).Replace(Path.DirectorySeparatorChar, '/');

    private static string Find(string start)
    {
        for (var folder = new DirectoryInfo(start); folder is not null; folder = folder.Parent)
        {
            if (File.Exists(Path.Combine(folder.FullName, "GuideBuilder.sln")))
            {
                return folder.FullName;
            }
        }

        throw new DirectoryNotFoundException($"No folder above {start} holds GuideBuilder.sln.");
    }
}
