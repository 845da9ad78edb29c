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
public sealed record Clock(RuleHead Head, string Party, LogKind StartsAt, string? StartsAtStep, int Limit, DayCount Of, LocalText Owes, LocalText WhatToWrite) : Rule(Head);
