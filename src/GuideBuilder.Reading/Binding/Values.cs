namespace GuideBuilder.Reading;

/// <summary>Reads one value from a node. Where there is a fault it is added, and a stand-in comes back so that reading can go on.</summary>
internal static class Values
{
    /// <summary>A person's words, without the line feed that ends a block.</summary>
    public static string Words(Node node, FaultList faults)
    {
        var text = Single(node, faults) ?? "";
        return text.TrimEnd('\n');
    }

    /// <summary>Words on one line, such as a name or a reference; digits are kept as written.</summary>
    public static string Line(Node node, FaultList faults)
    {
        var words = Words(node, faults);
        if (words.AsSpan().ContainsAny('\n', '\r'))
        {
            faults.Add(ReadingFaults.NotOneLine(node.Place));
        }

        return words;
    }

    /// <summary>Words for a reader, in the language of the guidance or of the translation laid over it. Nothing else may be translated.</summary>
    public static LocalText Text(Node node, FaultList faults) => node is Scalar { IsEmpty: false } scalar
        ? new(scalar.Text.TrimEnd('\n'), scalar.Language, node.Place)
        : new(Words(node, faults), LocalText.Original, node.Place);

    /// <summary>An id of kebab-case words.</summary>
    public static string Id(Node node, FaultList faults)
    {
        var text = Single(node, faults);
        if (text is not null && !Ids.IsId(text))
        {
            faults.Add(ReadingFaults.NotAnId(node.Place, text, Ids.From(text)));
        }

        return text ?? "";
    }

    /// <summary>Exactly yes or no.</summary>
    public static bool YesNo(Node node, FaultList faults)
    {
        var text = Single(node, faults);
        if (text is not null and not ("yes" or "no"))
        {
            faults.Add(ReadingFaults.NotYesNo(node.Place, text));
        }

        return text == "yes";
    }

    /// <summary>A number.</summary>
    public static decimal Number(Node node, FaultList faults)
    {
        var text = Single(node, faults);
        if (text is null)
        {
            return 0;
        }

        var number = Numbers.Read(text, out var right);
        if (number is null)
        {
            faults.Add(ReadingFaults.NotANumber(node.Place, text, right));
        }

        return number ?? 0;
    }

    /// <summary>A whole number between two ends, which count.</summary>
    public static Read<int> Whole(int least, int most) => (node, faults) =>
    {
        var before = faults.Count;
        var number = Number(node, faults);
        if (faults.Count == before && (number != decimal.Truncate(number) || number < least || number > most))
        {
            faults.Add(ReadingFaults.NotWhole(node.Place, least, most));
            return least;
        }

        return faults.Count == before ? (int)number : least;
    };

    /// <summary>A date, written year-month-day.</summary>
    public static LocalDate Date(Node node, FaultList faults) =>
        Single(node, faults) is { } text ? Dates.Read(text, node.Place, faults) ?? default : default;

    /// <summary>One of a closed list of words.</summary>
    public static Read<T> OneOf<T>(params (string Word, T Means)[] words) => (node, faults) =>
    {
        var text = Single(node, faults);
        foreach (var (word, means) in words)
        {
            if (word == text)
            {
                return means;
            }
        }

        if (text is not null)
        {
            faults.Add(ReadingFaults.NotOneOf(node.Place, text, words.Select(w => w.Word)));
        }

        return words[0].Means;
    };

    /// <summary>A list whose items are all read in the same way.</summary>
    public static Read<ImmutableArray<T>> ListOf<T>(Read<T> read) => (node, faults) =>
    {
        if (node is Sequence list)
        {
            return [.. list.Items.Select(item => read(item, faults))];
        }

        faults.Add(ReadingFaults.NotAList(node.Place));
        return [];
    };

    /// <summary>The text of a node that holds one value, or null with the fault added.</summary>
    public static string? Single(Node node, FaultList faults)
    {
        switch (node)
        {
            case Scalar { IsEmpty: true }:
                faults.Add(ReadingFaults.EmptyValue(node.Place));
                return null;
            case Scalar scalar:
                if (scalar.Language != LocalText.Original)
                {
                    faults.Add(ReadingFaults.NotForTranslation(scalar.Place));
                }

                return scalar.Text;
            default:
                faults.Add(ReadingFaults.NotOneValue(node.Place));
                return null;
        }
    }
}

/// <summary>Reads a value from a node, adding faults and returning a stand-in where it cannot.</summary>
internal delegate T Read<out T>(Node node, FaultList faults);
