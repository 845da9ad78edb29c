using GuideBuilder.Tests.Support;

namespace GuideBuilder.Tests.Published;

/// <summary>Values for the two formulas of Flesch and Kincaid (weights as published by J. P. Kincaid and others, 1975; derived by hand from them), and for the counting of syllables.</summary>
public sealed class ReadingGradeValues
{
    [Theory]
    [InlineData(6, 1, 6, 116.145, -1.45)]
    [InlineData(100, 5, 150, 59.635, 9.91)]
    [InlineData(117, 13, 146, 92.131, 2.645)]
    public void The_formulas_give_the_worked_values(int words, int sentences, int syllables, double ease, double grade)
    {
        Assert.Equal(ease, ReadingGrade.EaseOf(words, sentences, syllables), 0.005);
        Assert.Equal(grade, ReadingGrade.Of(words, sentences, syllables), 0.005);
    }

    // Often quoted with an ease of 116. Source: common examples of the formula, from memory.
    [Fact]
    public void The_sentence_of_the_cat_counts_six_words_of_one_syllable() => Assert.Equal((6, 1, 6), ReadingGrade.Count("The cat sat on the mat."));

    [Theory]
    [InlineData("cable", 2)]
    [InlineData("operator", 4)]
    [InlineData("electricity", 5)]
    [InlineData("moved", 1)]
    [InlineData("wanted", 2)]
    [InlineData("houses", 2)]
    [InlineData("name", 1)]
    [InlineData("through", 1)]
    [InlineData("105", 1)]
    [InlineData("quotation", 3)]
    [InlineData("dangerous", 3)]
    public void Syllables_are_counted_as_they_are_spoken(string word, int syllables) => Assert.Equal(syllables, ReadingGrade.Syllables(word));

    [Fact]
    public void A_colon_a_semicolon_and_a_line_end_a_sentence() => Assert.Equal(4, ReadingGrade.Count("Ask this: who comes; and when.\nWrite it down").Sentences);
}
