namespace GuideBuilder.Model;

/// <summary>One question: its full name is section and id; everything a person needs to answer it without touching anything.</summary>
public sealed record Question(
    string Section,
    string Id,
    LocalText Label,
    LocalText Wording,
    LocalText HowToFindOut,
    LocalText WhatItDecides,
    LocalText WhoCanTell,
    QuestionKind Kind,
    DataClass Data,
    Ease Ease,
    ImmutableArray<QuestionOption> Options,
    QuantityRange? Range,
    ImmutableArray<WeightedQuantity> IfUnknown,
    ImmutableArray<WeightRule> WeightsIf,
    Condition AskIf,
    Basis Basis,
    Place Place)
{
    /// <summary>The name used in conditions and answers files: section.id.</summary>
    public string Name => $"{Section}.{Id}";
}

/// <summary>What an answer looks like.</summary>
public enum QuestionKind
{
    /// <summary>One of the options.</summary>
    Choice,

    /// <summary>Any of the options, or none.</summary>
    Several,

    /// <summary>Yes or no.</summary>
    YesNo,

    /// <summary>A number with a unit.</summary>
    Quantity,

    /// <summary>A date, written year-month-day.</summary>
    Date,

    /// <summary>Days and spans of days, such as those on which nobody is at home.</summary>
    Days,

    /// <summary>A person's own words.</summary>
    Text,

    /// <summary>A number that is a name; digits are kept as written.</summary>
    NumberName,
}

/// <summary>The class of data that an answer holds; decides which editions, letters and sheets may print it.</summary>
public enum DataClass
{
    /// <summary>Nothing about a person.</summary>
    None,

    /// <summary>About an identifiable person or home.</summary>
    Personal,

    /// <summary>About health or need.</summary>
    Health,

    /// <summary>When nobody is at home.</summary>
    Absence,

    /// <summary>About another person, such as a neighbour.</summary>
    OtherPerson,
}

/// <summary>What it takes to find an answer out, the easiest first.</summary>
public enum Ease
{
    /// <summary>Somebody at home knows it, sees it from where a person may stand, or measures it.</summary>
    Look,

    /// <summary>It stands in a bill, a report or another paper, or on a public map.</summary>
    Papers,

    /// <summary>One call or one talk.</summary>
    Ask,

    /// <summary>It counts only in writing.</summary>
    Write,

    /// <summary>Somebody trained has to come.</summary>
    Visit,
}

/// <summary>One option of a question: its id in answers files, its wording, its weight when the answer is unknown, and whether the assumed world takes it.</summary>
public sealed record QuestionOption(string Id, LocalText Wording, decimal Weight, bool Assume, Place Place);

/// <summary>The unit of a bare number and the least and most that make sense, ends included.</summary>
public sealed record QuantityRange(Unit Unit, decimal Least, decimal Most);

/// <summary>A value that an unknown quantity may take, with its weight, and whether the assumed world takes it.</summary>
public sealed record WeightedQuantity(Quantity Value, decimal Weight, bool Assume);

/// <summary>Other weights for the options where a condition over earlier answers holds; the first that holds counts.</summary>
public sealed record WeightRule(Condition When, FrozenDictionary<string, decimal> Weights, Place Place);
