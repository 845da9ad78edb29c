namespace GuideBuilder.Cli.Asking;

/// <summary>Asks a questionnaire a section at a time. Every answer is saved as soon as it is given, so that nothing is lost whichever way the input ends.</summary>
internal sealed class Interview
{
    private readonly Func<string?> _read;
    private readonly Teller _teller;
    private readonly Action<Filling> _save;
    private readonly Occasion _occasion;
    private readonly string _where;
    private Filling _filling;
    private Effect? _effect;
    private bool _ended;

    private Interview(Filling filling, Occasion occasion, string where, Func<string?> read, Teller teller, Action<Filling> save)
    {
        (_filling, _occasion, _where, _read, _teller, _save) = (filling, occasion, where, read, teller, save);
        _effect = Effect.Of(filling, occasion);
    }

    /// <summary>Asks from the first question without an answer on, until all is asked, the person leaves, or the input ends; gives what is answered by then.</summary>
    internal static Filling Run(Filling filling, Occasion occasion, string where, Func<string?> read, Teller teller, Action<Filling> save)
    {
        var interview = new Interview(filling, occasion, where, read, teller, save);
        interview.Run();
        return interview._filling;
    }

    private void Run()
    {
        _teller.Say($"Your answers are saved in {_where} as you give them. Type help to see what else you can type.");
        for (var (section, fromEnd) = (FirstOpen(), false); section is not null && !_ended;)
        {
            var move = Section(section, fromEnd);
            var at = _filling.Sections.IndexOf(section) + move;
            section = at < 0 ? _filling.Sections[0] : at < _filling.Sections.Length ? _filling.Sections[at] : null;
            fromEnd = move < 0 && at >= 0;
        }

        var asked = _filling.Sections.SelectMany(s => _filling.Asked(s)).ToList();
        var answers = asked.Select(_filling.AnswerTo).ToList();
        _teller.Say();
        _teller.Say(Invariant($"Answered: {answers.Count(a => a?.Standing == Standing.Known)}. Not known: {answers.Count(a => a?.Standing == Standing.Unknown)}. Left for later: {answers.Count(a => a is null)}. {(answers.TrueForAll(a => a is null) ? "There is nothing to save." : $"Saved in {_where}.")}"));
    }

    private string? FirstOpen() =>
        _filling.Sections.FirstOrDefault(s => _filling.Asked(s).Any(q => _filling.AnswerTo(q) is null)) ?? _filling.Sections[0];

    // Gives 1 for the section after it and -1 for the one before.
    private int Section(string section, bool fromEnd)
    {
        if (_filling.Asked(section).IsEmpty)
        {
            return fromEnd ? -1 : 1;
        }

        if (!fromEnd)
        {
            Sheet(section);
        }

        var at = fromEnd ? _filling.Asked(section).Length : FirstOpenIn(section);
        var from = int.MaxValue;
        while (!_ended)
        {
            var asked = _filling.Asked(section);
            if (at < 0)
            {
                return -1;
            }

            var (step, goesOn) = at < asked.Length ? (AtQuestion(section, asked[at], at), false) : AtEnd(section, asked.Length, Math.Min(from, asked.Length - 1));
            if (goesOn)
            {
                return 1;
            }

            (from, at) = (at, step);
        }

        return 0;
    }

    private int FirstOpenIn(string section)
    {
        var asked = _filling.Asked(section);
        return asked.FirstOrDefault(q => _filling.AnswerTo(q) is null) is { } open ? asked.IndexOf(open) : 0;
    }

    // Gives the number, from nought, of the question to ask next; the number after the last is the end of the section.
    private int AtQuestion(string section, Question question, int at)
    {
        _teller.Question(_filling, question, at + 1);
        while (true)
        {
            _teller.Prompt("Answer");
            switch (Line.AtQuestion(_read(), question))
            {
                case Said.Answer answer when Take(question, answer.Value):
                    return _filling.Asked(section).IndexOf(question) + 1;
                case Said.Nothing or Said.Next:
                    return at + 1;
                case Said.Back:
                    return at - 1;
                case Said.Section:
                    return int.MaxValue;
                case Said.To to when to.Number >= 1 && to.Number <= _filling.Asked(section).Length:
                    return to.Number - 1;
                case Said.Later:
                    _ended = true;
                    return at;
                case var other:
                    Reply(other, section, question);
                    break;
            }
        }
    }

    // Back leads to where one came from.
    private (int At, bool GoesOn) AtEnd(string section, int asked, int from)
    {
        Sheet(section);
        var open = _filling.Asked(section).Count(q => _filling.AnswerTo(q) is null);
        var left = open == 0 ? "" : Invariant($" {open} of its questions have no answer yet.");
        var after = _filling.Sections.IndexOf(section) + 1;
        var next = after < _filling.Sections.Length ? $"goes on to: {Name(_filling.Sections[after])}" : "ends the questionnaire";
        while (true)
        {
            _teller.Prompt($"End of this section.{left} Enter {next}; a number goes to that question; back to where you were");
            switch (Line.AtEnd(_read()))
            {
                case Said.Nothing or Said.Next or Said.Section:
                    return (0, true);
                case Said.Back:
                    return (from, false);
                case Said.To to when to.Number >= 1 && to.Number <= asked:
                    return (to.Number - 1, false);
                case Said.Later:
                    _ended = true;
                    return (0, false);
                case Said.Sheet:
                    Sheet(section);
                    break;
                case Said.Save:
                    Saved();
                    break;
                default:
                    _teller.Say(Invariant($"Press Enter, type a number from 1 to {asked}, back, sheet, save or later."));
                    break;
            }
        }
    }

    private void Reply(Said said, string section, Question question)
    {
        switch (said)
        {
            case Said.Sheet:
                Sheet(section);
                break;
            case Said.Why:
                _teller.Say($"{question.WhatItDecides.Words} {_effect?.Waiting(question)}".Trim());
                break;
            case Said.Help:
                _teller.Help();
                break;
            case Said.Save:
                Saved();
                break;
            case Said.To:
                _teller.Say(Invariant($"This section has the questions 1 to {_filling.Asked(section).Length}."));
                break;
            case Said.NotThere number:
                _teller.Say(Invariant($"There is no {number.Number} here. Type a number from 0 to {question.Options.Length}."));
                break;
            case Said.TooMuch most:
                _teller.Say(Invariant($"That is too long: at most {most.Most} characters."));
                break;
        }
    }

    // Whether the answer is one; if not, says what would be right.
    private bool Take(Question question, Written answer)
    {
        var now = _filling.With(question, answer);
        var faults = now.Faults.Where(f => f.Place.Path == question.Name).ToList();
        var none = Line.NoneOf(answer, question);
        foreach (var words in none.Length > 0 && faults.Count > 0 ? [Line.Right(none, question)] : faults.Select(f => $"{f.Wrong} {f.Right}"))
        {
            _teller.Say(words);
        }

        if (faults.Exists(f => f.Severity == Severity.Error))
        {
            return false;
        }

        if (question.Name == "home.nation" && now.AnswerTo(question) is not { Standing: Standing.Known })
        {
            _teller.Say("This is the one question that needs an answer: law, papers, prices and numbers to call differ between the nations.");
            return false;
        }

        var before = _filling;
        _filling = now;
        _save(now);
        Tell(before);
        return true;
    }

    private void Tell(Filling before)
    {
        var dropped = before.Sections.SelectMany(s => before.Asked(s)).Where(q => before.AnswerTo(q) is not null && !_filling.IsAsked(q)).Select(q => q.Label.Words).ToList();
        if (dropped.Count > 0)
        {
            _teller.Say($"Not asked any longer, and left out of the file: {string.Join("; ", dropped)}.");
        }

        var effect = Effect.Of(_filling, _occasion);
        if (effect is not null)
        {
            _teller.Say(effect.Since(_effect));
        }

        _effect = effect;
    }

    private void Saved()
    {
        _save(_filling);
        _teller.Say($"Saved in {_where}.");
    }

    private void Sheet(string section) => _teller.Section(_filling, section, Name(section));

    private string Name(string section) => _filling.Guidance.Labels.TryGetValue("section-" + section, out var label) ? label.One.Words : section;
}
