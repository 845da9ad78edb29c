using GuideBuilder.Model;

namespace GuideBuilder.Tests.Reading;

public sealed class HandbookTests
{
    [Theory]
    [InlineData("answers/avebury-close.yaml", "avebury-close")]
    [InlineData("avebury-close.yaml", "avebury-close")]
    [InlineData("C:\\homes\\14 Avebury Close.yml", "14-avebury-close")]
    [InlineData("My_House (new).v2.yaml", "my-house-new-v2")]
    [InlineData("house", "house")]
    [InlineData("a-name-that-goes-on-and-on-and-on-and-on-and-on.yaml", "a-name-that-goes-on-and-on-and-on-and-on")]
    public void The_id_is_made_from_the_name_of_the_file(string path, string id)
    {
        var answers = SmallAnswers.Read(SmallAnswers.Around(""), path).Value!;

        Assert.Equal(id, answers.Handbook.Id);
        Assert.DoesNotContain('/', answers.FileName);
        Assert.DoesNotContain('\\', answers.FileName);
    }

    [Theory]
    [InlineData("é.yaml")]
    [InlineData("ab.yaml")]
    [InlineData("CON.yaml")]
    [InlineData("...")]
    [InlineData("🏠🏠🏠.yaml")]
    public void A_file_whose_name_makes_no_id_must_say_one(string path)
    {
        Assert.Equal("HB1057", Assert.Single(SmallAnswers.Read(SmallAnswers.Around(""), path).Faults).Code);
        Assert.Empty(SmallAnswers.Read(SmallAnswers.Around("").Replace("format: 1", "format: 1, id: our-house", StringComparison.Ordinal), path).Faults);
    }

    [Theory]
    [InlineData("«{id: our-house}»", "HB1021")]
    [InlineData("{format: «2»}", "HB1054")]
    [InlineData("{format: «one»}", "HB1026")]
    [InlineData("{format: 1, id: «../up»}", "HB1055")]
    [InlineData("{format: 1, id: «/etc/passwd»}", "HB1055")]
    [InlineData("{format: 1, id: «Our-House»}", "HB1055")]
    [InlineData("{format: 1, id: «ab»}", "HB1055")]
    [InlineData("{format: 1, id: «com1»}", "HB1055")]
    [InlineData("{format: 1, id: «our--house»}", "HB1055")]
    [InlineData("{format: 1, id: «house.»}", "HB1055")]
    [InlineData("{format: 1, id: «aaaaaaaaaabbbbbbbbbbccccccccccddddddddddx»}", "HB1055")]
    [InlineData("«{format: 1, edition: public}»", "HB1056")]
    [InlineData("{format: 1, edition: «neighbor»}", "HB1034")]
    [InlineData("{format: 1, «filled-by»: me}", "HB1020")]
    public void A_wrong_setting_is_found_where_it_stands(string settings, string code) =>
        SmallAnswers.FindsIn($"handbook: {settings}\nwish: {{moves: [meter]}}\nhome: {{nation: england}}\n", code);

    [Fact]
    public void Settings_are_kept()
    {
        var answers = SmallAnswers.Read("handbook: {format: 1, id: show-home, edition: public, filled-in-by: A neighbour, imprint: ours.yaml}\nwish: {moves: [meter]}\nhome: {nation: england}\n").Value!;

        Assert.Equal(new HandbookSettings(1, "show-home", EditionKind.Public, "A neighbour", new("ours.yaml", new(SmallAnswers.Path, 1, 91))), answers.Handbook);
    }
}
