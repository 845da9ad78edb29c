namespace GuideBuilder.Reading;

/// <summary>Lays the words of one language over the guidance: entries by id, pages and letters whole. What is laid over is stamped with its language, so that whoever reads something other than words there makes a fault of it.</summary>
internal sealed class WordOverlay(string language, FaultList faults)
{
    private const string Id = "id";
    private const string One = "one";
    private const string Other = "other";

    /// <summary>The same files with one file of words laid over its namesake; a file without one stays beside them, to be read by itself.</summary>
    public ImmutableArray<ContentFile> Over(ImmutableArray<ContentFile> files, ContentFile words)
    {
        if (words.Name == Layout.LanguageFile)
        {
            return files.Add(words);
        }

        var under = files.FirstOrDefault(f => f.Name == words.Name);
        if (under is null)
        {
            faults.Add(ReadingFaults.NothingToTranslate(words.Start, words.Name, files.Select(f => f.Name)));
            return files;
        }

        return files.Replace(under, words.Text is { } text ? Page(under, words, text) : words.Root is { } root && under.Root is { } base_ ? under with { Root = Lay(base_, root) } : under);
    }

    // A title alone translates the title alone: the text stays as it was.
    private ContentFile Page(ContentFile under, ContentFile words, string text)
    {
        var isTitle = text.StartsWith("# ", StringComparison.Ordinal) && text.Trim().Split('\n').Length == 1;
        return isTitle ? under with { OwnTitle = new(text.Trim()[2..].Trim(), language, words.Start) } : words;
    }

    private Node Lay(Node under, Node over) => (under, over) switch
    {
        (Mapping one, Mapping other) => Lay(one, other),
        (Sequence one, Sequence other) when other.Items.All(i => i is Mapping) && one.Items.All(i => i is Mapping) => Lay(one, other),
        _ => Stamped(over),
    };

    private Mapping Lay(Mapping under, Mapping over)
    {
        var laid = over[One] is not null && over[Other] is null ? under with { Entries = under.Entries.RemoveAll(e => e.Key.Is(Other)) } : under;
        foreach (var entry in over.Entries.Where(e => !e.Key.Is(Id)))
        {
            var place = laid.Entries.ToList().FindIndex(e => e.Key.Is(entry.Key.Text));
            if (place < 0 && entry.Value is Mapping)
            {
                faults.Add(ReadingFaults.NothingToTranslate(entry.Key.Place, entry.Key.Text, under.Entries.Select(e => e.Key.Text)));
                continue;
            }

            laid = laid with
            {
                Entries = place < 0
                    ? laid.Entries.Add(new(entry.Key, Stamped(entry.Value)))
                    : laid.Entries.SetItem(place, new(entry.Key, Lay(laid.Entries[place].Value, entry.Value))),
            };
        }

        return laid;
    }

    // Entries find their like by id; a list without ids is matched place by place, and must then be as long.
    private Sequence Lay(Sequence under, Sequence over)
    {
        if (under.Items.All(i => ((Mapping)i)[Id] is null))
        {
            if (under.Items.Length != over.Items.Length)
            {
                faults.Add(ReadingFaults.OtherLength(over.Place, under.Items.Length));
            }

            return under with { Items = [.. under.Items.Select((item, i) => i < over.Items.Length ? Lay(item, over.Items[i]) : item)] };
        }

        var byId = under.Items.Select((item, i) => (Id: IdOf(item), i)).Where(p => p.Id is not null).DistinctBy(p => p.Id, StringComparer.Ordinal).ToDictionary(p => p.Id!, p => p.i, StringComparer.Ordinal);
        var items = under.Items.ToBuilder();
        foreach (var item in over.Items)
        {
            if (IdOf(item) is { } id && byId.TryGetValue(id, out var place))
            {
                items[place] = Lay(items[place], item);
            }
            else
            {
                faults.Add(ReadingFaults.NothingToTranslate(((Mapping)item)[Id]?.Place ?? item.Place, IdOf(item) ?? "", byId.Keys));
            }
        }

        return under with { Items = items.ToImmutable() };
    }

    private static string? IdOf(Node item) => ((Mapping)item)[Id] is Scalar scalar ? scalar.Text : null;

    private Node Stamped(Node node) => node switch
    {
        Scalar scalar => scalar with { Language = language },
        Sequence list => list with { Items = [.. list.Items.Select(Stamped)] },
        Mapping mapping => mapping with { Entries = [.. mapping.Entries.Select(e => new Entry(e.Key, Stamped(e.Value)))] },
        _ => throw new UnreachableException(),
    };
}
