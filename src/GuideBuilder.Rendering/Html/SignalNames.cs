namespace GuideBuilder.Rendering.Html;

/// <summary>The names of the signal words in the stylesheet and the labels.</summary>
internal static class SignalNames
{
    /// <summary>The name of a signal word.</summary>
    internal static string Of(SignalWord word) => word switch
    {
        SignalWord.Notice => "notice",
        SignalWord.Caution => "caution",
        SignalWord.Warning => "warning",
        SignalWord.Danger => "danger",
        _ => throw new UnreachableException(),
    };
}
