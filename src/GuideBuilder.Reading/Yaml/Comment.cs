namespace GuideBuilder.Reading;

/// <summary>A comment: its words after the #, whether nothing else stands on its line, and the line, counted from one.</summary>
internal sealed record Comment(string Words, bool Alone, int Line);
