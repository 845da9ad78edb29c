namespace GuideBuilder.Model;

/// <summary>A permission, notice, certificate or legal duty: who gives it, when it must be had (CommonMark), and the step that waits for it.</summary>
public sealed record Consent(RuleHead Head, ConsentKind Kind, LocalText WhoGives, LocalText WhenNeeded, LocalText About, string? Gates) : Rule(Head);

/// <summary>What kind of paper or duty it is.</summary>
public enum ConsentKind
{
    /// <summary>Somebody must say yes.</summary>
    Permission,

    /// <summary>Somebody must be told.</summary>
    Notification,

    /// <summary>A paper that proves work.</summary>
    Certificate,

    /// <summary>What the law asks of the person who has the work done.</summary>
    LegalDuty,
}

/// <summary>A published time limit running against a party, and what it owes when late.</summary>
public sealed record Clock(RuleHead Head, string Party, LogKind StartsAt, string? StartsAtStep, int Limit, DayCount Of, LocalText Owes, LocalText WhatToWrite) : Rule(Head)
{
    /// <summary>The happening that ends it, and the step that it names; null where only the calendar does.</summary>
    public LogKind? EndsAt { get; init; }

    /// <summary>The step named by the happening that ends it; null where one of its party does.</summary>
    public string? EndsAtStep { get; init; }

    /// <summary>What a published text gives for being late; null where no sum could be read.</summary>
    public ClockSum? Sum { get; init; }

    /// <summary>The letter to send when it is late.</summary>
    public string? Letter { get; init; }
}

/// <summary>A published sum, for what it is owed, and the day of the text that gives it. It may have changed since.</summary>
public sealed record ClockSum(Quantity Amount, SumFor For, LocalDate AsAt);

/// <summary>For what a published sum is owed.</summary>
public enum SumFor
{
    /// <summary>For the failure that started the clock.</summary>
    Failure,

    /// <summary>Once, when the limit has passed.</summary>
    Lateness,

    /// <summary>For each day late.</summary>
    EachDayLate,
}
