using GuideBuilder.Model;

namespace GuideBuilder.Tests.Reading;

public sealed class AnswerReaderTests
{
    [Fact]
    public void Every_question_of_the_guidance_gets_an_answer()
    {
        var answers = SmallAnswers.Given("  kind: detached\n  looped: unknown");

        Assert.Equal(SmallGuidance.Value.Questions.Select(q => q.Name).Order(StringComparer.Ordinal), answers.ByName.Keys.Order(StringComparer.Ordinal));
        Assert.Equal(Standing.Known, answers["home.kind"].Standing);
        Assert.Equal(Standing.NotAsked, answers["home.block-stair"].Standing);
        Assert.Equal(Standing.Unknown, answers["home.storeys"].Standing);
        Assert.Null(answers["home.storeys"].Place);
        Assert.Equal(Standing.Unknown, answers["home.looped"].Standing);
        Assert.Equal(new Place(SmallAnswers.Path, 6, 11), answers["home.looped"].Place);
    }

    [Fact]
    public void A_question_whose_condition_is_open_is_asked() =>
        Assert.Equal(Standing.Known, SmallAnswers.Given("  kind: unknown\n  block-stair: more")["home.block-stair"].Standing);

    [Fact]
    public void Values_are_read_as_their_questions_say()
    {
        var answers = SmallAnswers.Given("""
              storeys: 2
              looped: no
              signs: [rust, smoke]
              address: |
                14 Avebury Close
                Thornwick
              supply-number: 00123456789012345678901
            place: {distance: 5 ft 6 in, offer: "£1,180.50 inc VAT"}
            dates: {needed-by: 2027-03-15, away: [2027-02-01, 2027-02-10 to 2027-02-14]}
            """);

        Assert.Equal(new Value.Amount(Quantity.Number(2)), answers["home.storeys"].Value);
        Assert.Equal(new Value.Option("no"), answers["home.looped"].Value);
        Assert.Equal(["smoke", "rust"], Assert.IsType<Value.Several>(answers["home.signs"].Value).Ids);
        Assert.Equal(new Value.Words("14 Avebury Close\nThornwick"), answers["home.address"].Value);
        Assert.Equal(new Value.NumberName("00123456789012345678901"), answers["home.supply-number"].Value);
        Assert.Equal(new Value.Amount(Quantity.Of(66, "in")), answers["place.distance"].Value);
        Assert.Equal(new Value.Amount(Quantity.Of(1180.50m, "£"), VatBasis.Including), answers["place.offer"].Value);
        Assert.Equal(new Value.Day(new(2027, 3, 15)), answers["dates.needed-by"].Value);
        Assert.Equal(
            [new(new(2027, 2, 1), new(2027, 2, 1)), new(new(2027, 2, 10), new(2027, 2, 14))],
            Assert.IsType<Value.Days>(answers["dates.away"].Value).Spans);
    }

    [Theory]
    [InlineData("no", "no")]
    [InlineData("Null", "Null")]
    [InlineData("1:30", "1:30")]
    [InlineData("0x1F", "0x1F")]
    [InlineData("2027-03-15", "2027-03-15")]
    [InlineData("'unknown'", "unknown")]
    [InlineData("<script>alert(1)</script>", "<script>alert(1)</script>")]
    [InlineData("'{{ 7 * 7 }}'", "{{ 7 * 7 }}")]
    public void A_persons_own_words_are_kept_whatever_they_look_like(string written, string kept) =>
        Assert.Equal(new Value.Words(kept), SmallAnswers.Given($"  address: {written}")["home.address"].Value);

    [Theory]
    [InlineData("010")]
    [InlineData("'010'")]
    [InlineData("1_000")]
    [InlineData("1e3")]
    [InlineData("12345678901234567890123456789")]
    public void A_number_that_is_a_name_keeps_its_digits(string written) =>
        Assert.Equal(new Value.NumberName(written.Trim('\'')), SmallAnswers.Given($"  supply-number: {written}")["home.supply-number"].Value);

    [Fact]
    public void None_is_an_answer_and_unknown_is_not()
    {
        Assert.Empty(Assert.IsType<Value.Several>(SmallAnswers.Given("  signs: none")["home.signs"].Value).Ids);
        Assert.Null(SmallAnswers.Given("  signs: unknown")["home.signs"].Value);
    }

    [Fact]
    public void An_answer_to_a_question_that_is_not_asked_names_what_ruled_it_out()
    {
        SmallAnswers.Finds("  kind: boat\n  block-stair: «single»", "HB1051");
        Assert.Contains("`home.kind` is boat in line 5", SmallAnswers.Read(SmallAnswers.Around("  kind: boat\n  block-stair: single")).Faults[0].Wrong, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("«{}»", "HB1021", "HB1053")]
    [InlineData("«wish»", "HB1023")]
    [InlineData("«- wish»", "HB1023")]
    [InlineData("handbook: {format: 1}\nwish: {moves: unknown}\nhome: «{kind: flat}»", "HB1052")]
    [InlineData("handbook: {format: 1}\nwish: {moves: [meter]}\nhome: {nation: «unknown»}", "HB1052")]
    [InlineData("handbook: {format: 1}\nwish: {moves: [meter]}\nhome: {nation: «scotland»}", "HB1066")]
    [InlineData("handbook: {format: 1}\nwish: «{}»\nhome: {nation: england}", "HB1053")]
    [InlineData("«home: {nation: england}\n»wish: {moves: [meter]}", "HB1021")]
    public void What_must_be_there_is_missed(string file, params string[] codes)
    {
        var marked = Marked.Parse(file);
        var faults = SmallAnswers.Read(marked.Text).Faults;

        Assert.All(codes, code => Assert.Contains(faults, f => f.Code == code && (f.Place.Line, f.Place.Column) == marked.Marks[0]));
        Assert.Null(SmallAnswers.Read(marked.Text).Value);
    }

    [Theory]
    [InlineData("  «natoin»: england", "HB1050")]
    [InlineData("  «distance»: 4 m", "HB1050")]
    [InlineData("«hoem»: {kind: flat}", "HB1020")]
    [InlineData("  kind: «castle»", "HB1066")]
    [InlineData("  kind: «[flat]»", "HB1025")]
    [InlineData("  kind: «Flat»", "HB1066")]
    [InlineData("  kind:«»", "HB1022")]
    [InlineData("  kind: «~»", "HB1022")]
    [InlineData("  kind: «null»", "HB1022")]
    [InlineData("  address: «''»", "HB1022")]
    [InlineData("  looped: «true»", "HB1029")]
    [InlineData("  looped: «Yes»", "HB1029")]
    [InlineData("  looped: «on»", "HB1029")]
    [InlineData("  looped: «y»", "HB1029")]
    [InlineData("  signs: «smoke»", "HB1024")]
    [InlineData("  signs: «[]»", "HB1043")]
    [InlineData("  signs:«»", "HB1022")]
    [InlineData("  signs: [smoke, «smok»]", "HB1066")]
    [InlineData("  signs: [smoke, wet, «smoke»]", "HB1042")]
    [InlineData("  supply-number: «|\n    12\n    34»", "HB1035")]
    [InlineData("place: {offer: £1,«180»}", "HB1019")]
    [InlineData("place: {distance: «400 m»}", "HB1028")]
    [InlineData("place: {distance: «far»}", "HB1036")]
    [InlineData("dates: {needed-by: «15/03/2027»}", "HB1030")]
    [InlineData("dates: {needed-by: «2027-3-15»}", "HB1030")]
    [InlineData("dates: {needed-by: «2027-02-30»}", "HB1031")]
    [InlineData("dates: {needed-by: «0001-01-01»}", "HB1031")]
    [InlineData("dates: {away: [«2027-03-02 to 2027-03-01»]}", "HB1032")]
    [InlineData("dates: {away: [«soon»]}", "HB1030")]
    [InlineData("dates: {away: [«2027-03-01 to 2027-03-02 to 2027-03-03»]}", "HB1030")]
    public void A_wrong_answer_is_found_where_it_stands(string lines, string code) => SmallAnswers.Finds(lines, code);

    [Fact]
    public void A_near_word_is_offered()
    {
        Assert.Contains("`nation`", Right("  natoin: england"), StringComparison.Ordinal);
        Assert.Contains("section `place`", Right("  distance: 4 m"), StringComparison.Ordinal);
        Assert.Contains("`home`", Right("hoem: {kind: flat}"), StringComparison.Ordinal);
        Assert.Contains("`detached`", Right("  kind: detatched"), StringComparison.Ordinal);

        static string Right(string lines) => SmallAnswers.Read(SmallAnswers.Around(lines)).Faults[0].Right;
    }

    [Fact]
    public void Eleven_mistakes_give_eleven_faults_in_one_run() =>
        SmallAnswers.FindsIn(
            """
            handbook: {format: «2», id: «Our House»}
            home:
              nation: england
              kind: boat
              «knid»: flat
              block-stair: «single»
              storeys: «010»
              looped: «true»
              signs: [wet, «fire»]
              «kind»: flat
            wish: {moves: [meter]}
            place: {distance: «4 kg», offer: «"£1,180.5"»}
            dates: {needed-by: «2027-02-30»}

            """,
            "HB1054", "HB1055", "HB1050", "HB1051", "HB1026", "HB1029", "HB1066", "HB1014", "HB1038", "HB1040", "HB1031");
}
