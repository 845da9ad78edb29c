namespace GuideBuilder.Cli;

/// <summary>The numbers the program ends with, which never change.</summary>
internal enum Exit
{
    /// <summary>Done as asked, perhaps with warnings.</summary>
    Done = 0,

    /// <summary>There are faults in the answers or the guidance; nothing was written.</summary>
    Faults = 1,

    /// <summary>The command line was not understood.</summary>
    WrongUse = 2,

    /// <summary>Something could not be read or written; what stood there before still stands.</summary>
    Disk = 3,
}
