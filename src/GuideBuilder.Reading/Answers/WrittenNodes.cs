namespace GuideBuilder.Reading;

/// <summary>Makes of an answers file as it is written the tree that would be read; the place of each answer is its question's full name.</summary>
internal static class WrittenNodes
{
    /// <summary>The tree; a character that no file may hold is a fault.</summary>
    public static Node Of(WrittenAnswers written, FaultList faults) =>
        new Mapping([.. written.Sections.Select(s => new Entry(Key(s.Key, s.Key), Section(s, faults)))], At(""));

    private static Node Section(WrittenEntry section, FaultList faults) => section.Value is Written.Keys keys
        ? new Mapping([.. keys.Entries.Select(e => new Entry(Key(e.Key, Name(section, e)), Value(e.Value, Name(section, e), faults)))], At(section.Key))
        : Value(section.Value, section.Key, faults);

    private static Node Value(Written value, string name, FaultList faults) => value switch
    {
        Written.One one => Scalar(one, name, faults),
        Written.List list => new Sequence([.. list.Items.Select(i => Value(i.Value, name, faults))], At(name)),
        Written.Keys keys => new Mapping([.. keys.Entries.Select(e => new Entry(Key(e.Key, name), Value(e.Value, name, faults)))], At(name)),
        _ => throw new UnreachableException(),
    };

    private static Scalar Scalar(Written.One one, string name, FaultList faults)
    {
        foreach (var c in one.Text)
        {
            if (Characters.Forbidden(c) is { } why)
            {
                faults.Add(ReadingFaults.ForbiddenCharacter(At(name), Characters.Code(c), why));
                break;
            }
        }

        return new(one.Text, one.Quoted ? ScalarForm.Quoted : ScalarForm.Plain, At(name));
    }

    private static string Name(WrittenEntry section, WrittenEntry entry) => $"{section.Key}.{entry.Key}";

    private static Scalar Key(string key, string name) => new(key, ScalarForm.Plain, At(name));

    private static Place At(string name) => new(name, 1, 1);
}
