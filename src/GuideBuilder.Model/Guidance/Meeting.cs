namespace GuideBuilder.Model;

/// <summary>A day on which several parties must come in order: what holds it back, what calling off each crew asks, and what can go wrong. Its id is the one that steps name.</summary>
public sealed record Meeting(string Id, LocalText Title, MeetingHold? Hold, ImmutableArray<Crew> Crews, ImmutableArray<Mishap> Mishaps, Basis Basis, Place Place);

/// <summary>While the condition holds or is open, the day is not to be fixed until these steps are done and these questions (section.id) answered.</summary>
public sealed record MeetingHold(Condition If, ImmutableArray<string> Done, ImmutableArray<string> Answered);

/// <summary>A party of a meeting: how many of its working days before the day it can be called off free of charge, the question whose answer outranks that, and the cost lines of a call too late.</summary>
public sealed record Crew(string Party, int FreeUntil, string? Or, ImmutableArray<string> Costs);

/// <summary>Something that can go wrong at one of the turns named: what to do, who pays, and whether the house is left without supply (CommonMark texts).</summary>
public sealed record Mishap(string Id, LocalText Title, ImmutableArray<string> Turns, LocalText WhatToDo, LocalText WhoPays);
