using System.Globalization;

/// <summary>Run by the runtime inside the program before its first line when a test asks for it: says on standard error what the program really has.</summary>
internal static class StartupHook
{
    public static void Initialize()
    {
        if (Environment.GetEnvironmentVariable("TELL") == "libraries")
        {
            AppDomain.CurrentDomain.ProcessExit += (_, _) => Console.Error.WriteLine(string.Join('\n', AppDomain.CurrentDomain.GetAssemblies().Select(a => a.GetName().Name)));
            return;
        }

        // The three letters tell a Turkish culture from every other, and any real culture from the invariant one.
        var culture = CultureInfo.CurrentCulture;
        Console.Error.WriteLine($"culture {culture.Name} {"title".ToUpper(culture)} {TimeZoneInfo.Local.Id}");
    }
}
