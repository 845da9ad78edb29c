namespace GuideBuilder.Reading;

/// <summary>Collects every id before entries are read, and finds the ones used twice.</summary>
internal static class IdScan
{
    private const string Shared = "";

    /// <summary>The registry of all files.</summary>
    public static Registry Of(ImmutableArray<ContentFile> files, FaultList faults)
    {
        var isComplete = files.All(f => f.Root is not null || f.Text is not null);
        var registry = new Registry(NameScan.Of(files), isComplete);
        foreach (var file in files)
        {
            var kind = Layout.KindOf(file.Name)!;
            foreach (var (id, place) in IdsOf(file, kind))
            {
                Add(registry, kind, kind == Kinds.Question ? $"{file.Stem}.{id}" : id, place, faults);
            }

            foreach (var made in file.Entries.Where(_ => kind == Kinds.Step).SelectMany(e => ((e["makes"] as Sequence)?.Items ?? []).OfType<Scalar>()))
            {
                registry.Add(Kinds.Made, made.Text, made.Place);
            }

            foreach (var (id, place) in file.Entries.Where(_ => kind == Kinds.Step).SelectMany(e => IdsOf(((e["may-happen"] as Sequence)?.Items ?? []).OfType<Mapping>())))
            {
                Add(registry, Kinds.Event, id, place, faults);
            }
        }

        return registry;
    }

    private static IEnumerable<(string Id, Place Place)> IdsOf(ContentFile file, string kind) => kind switch
    {
        Layout.Head => IdsOf(file.Entries.SelectMany(e => ((e["nations"] as Sequence)?.Items ?? []).OfType<Mapping>())),
        Kinds.Page or Kinds.Letter => [(file.Stem, file.Start)],
        _ => IdsOf(file.Entries),
    };

    private static IEnumerable<(string Id, Place Place)> IdsOf(IEnumerable<Mapping> entries) =>
        entries.Select(e => e["id"]).OfType<Scalar>().Where(s => !s.IsEmpty).Select(s => (s.Text, s.Place));

    private static void Add(Registry registry, string kind, string id, Place place, FaultList faults)
    {
        var own = kind == Layout.Head ? Kinds.Nation : kind;
        var first = registry.Add(own, id, place);
        if (Kinds.SharingIds.Contains(own))
        {
            first = registry.Add(Shared, id, place) ?? first;
        }

        if (first is not null)
        {
            faults.Add(ReadingFaults.DuplicateId(place, id, first));
        }
    }
}
