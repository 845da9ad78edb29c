namespace GuideBuilder.Reading;

/// <summary>The prices and durations of an imprint, for lines of its own parties only.</summary>
internal sealed class ImprintLines(Guidance guidance, Imprint imprint, FaultList faults)
{
    private static readonly Read<VatBasis> ReadBasis = Values.OneOf(("inc VAT", VatBasis.Including), ("ex VAT", VatBasis.Excluding), ("outside VAT", VatBasis.Outside));

    // Read through the same readers as the guidance's own; an imprint names no sources, so that no id has to be known.
    private readonly Desk _desk = new(new Registry([], isComplete: false), faults, default);

    /// <summary>The guidance with the firm's own prices, by cost id, and the source that they name.</summary>
    public Guidance Prices(Node? node, Guidance over)
    {
        foreach (var entry in Entries(node, "prices"))
        {
            var cost = guidance.Costs.FirstOrDefault(c => c.Id == entry.Key.Text);
            if (cost is null || !IsOwn(entry.Key, cost.InvoicedBy))
            {
                Unknown(entry.Key, cost, Kinds.Cost, guidance.Costs.Where(c => imprint.Parties.Contains(c.InvoicedBy)).Select(c => c.Id));
                continue;
            }

            var own = Price(entry.Value, guidance.Tables.Prices.First(p => p.Id == cost.Price), Imprint.SourceId + "-" + cost.Id);
            over = over with
            {
                Tables = over.Tables with { Prices = over.Tables.Prices.Add(own) },
                Costs = over.Costs.Replace(cost, cost with { Price = own.Id, Head = cost.Head with { Basis = Basis } }),
                Imprint = over.Imprint! with { OwnPrices = over.Imprint.OwnPrices.Add(cost.Id) },
            };
        }

        return over with { Sources = over.Sources.Add(Source()) };
    }

    /// <summary>The guidance with the firm's own durations, by step id.</summary>
    public Guidance Durations(Node? node, Guidance over)
    {
        foreach (var entry in Entries(node, "durations"))
        {
            var step = guidance.Steps.FirstOrDefault(s => s.Id == entry.Key.Text);
            if (step is null || !IsOwn(entry.Key, step.Party))
            {
                Unknown(entry.Key, step, Kinds.Step, guidance.Steps.Where(s => imprint.Parties.Contains(s.Party)).Select(s => s.Id));
                continue;
            }

            var takes = _desk.One(entry.Value, "a duration", f => new StepReader(_desk).OneDuration(f, Basis));
            over = over with { Steps = over.Steps.Replace(step, step is { Meeting: not null, Hours: { } hours } ? step with { Hours = Turn(entry, takes, hours) } : step with { Takes = takes }) };
        }

        return over;
    }

    // A turn of a day is run on its hours, and tests and holds hang on them: no firm is quicker than the least that the guidance gives.
    private ThreePoint Turn(Entry entry, Model.Duration own, ThreePoint guidance)
    {
        if (own.Unit == DayCount.Hours && own.Amount.Low >= guidance.Low)
        {
            return own.Amount;
        }

        faults.Add(ReadingFaults.NotATurn(entry.Value.Place, entry.Key.Text, guidance.Low));
        return guidance;
    }

    private static Basis Basis { get; } = new([Imprint.SourceId], Mark.Judged, null, null);

    private ImmutableArray<Entry> Entries(Node? node, string what)
    {
        if (node is not null and not Mapping)
        {
            faults.Add(ReadingFaults.NotAMapping(node.Place, what));
        }

        return node is Mapping mapping ? mapping.Entries : [];
    }

    private bool IsOwn(Scalar key, string party)
    {
        var isOwn = imprint.Parties.Contains(party);
        if (!isOwn)
        {
            faults.Add(ReadingFaults.NotYourLine(key.Place, key.Text, party));
        }

        return isOwn;
    }

    private void Unknown(Scalar key, Rule? rule, string kind, IEnumerable<string> own)
    {
        if (rule is null)
        {
            faults.Add(ReadingFaults.UnknownReference(key.Place, key.Text, kind, own));
        }
    }

    // A firm's own price is of the newest year and of its own region: nothing is multiplied into it.
    private Price Price(Node node, Price under, string id) => _desk.One(node, "a price", fields => under with
    {
        Id = id,
        Amount = _desk.ThreePoint(fields, PriceReader.Sum(under.Currency)),
        StatedAs = fields.Need("stated-as", ReadBasis, under.StatedAs),
        Year = guidance.Tables.Indexes.Where(i => i.Id == under.Index).SelectMany(i => i.ByYear.Keys).DefaultIfEmpty(under.Year).Max(),
        RegionFactor = null,
        Nations = [],
        Basis = Basis,
        Place = node.Place,
    });

    private Source Source()
    {
        var words = guidance.Labels.TryGetValue("source-imprint", out var label) ? label.One with { Words = label.One.Words.Replace("{name}", imprint.Name.Words, StringComparison.Ordinal) } : imprint.Name;
        return new(Imprint.SourceId, words, imprint.Name.Words, "", "", "", "", Mark.Judged, null, imprint.Place);
    }
}
