using GuideBuilder.Planning.Calendars;
using GuideBuilder.Tests.Support;
using NodaTime;
using PublicHoliday;

namespace GuideBuilder.Tests.Published;

/// <summary>
/// Public holidays of 2026 to 2028 and Easter. The dates follow the Banking and Financial Dealings Act 1971, sch. 1 (read), the St Andrew's Day Bank Holiday (Scotland) Act 2007 (read)
/// and the Organisation of Working Time Act 1997, sch. 2 (read in three copies); those of 2026 and 2027 were also seen in printed lists, those of 2028 are derived. None is a proclamation.
/// </summary>
public sealed class HolidayTables
{
    private const string EnglandAndWales = """
        2026: 1-1 4-3 4-6 5-4 5-25 8-31 12-25 12-28
        2027: 1-1 3-26 3-29 5-3 5-31 8-30 12-27 12-28
        2028: 1-3 4-14 4-17 5-1 5-29 8-28 12-25 12-26
        """;

    private const string Scotland = """
        2026: 1-1 1-2 4-3 5-4 5-25 6-15 8-3 11-30 12-25 12-28
        2027: 1-1 1-4 3-26 5-3 5-31 8-2 11-30 12-27 12-28
        2028: 1-3 1-4 4-14 5-1 5-29 8-7 11-30 12-25 12-26
        """;

    private const string NorthernIreland = """
        2026: 1-1 3-17 4-3 4-6 5-4 5-25 7-13 8-31 12-25 12-28
        2027: 1-1 3-17 3-26 3-29 5-3 5-31 7-12 8-30 12-27 12-28
        2028: 1-3 3-17 4-14 4-17 5-1 5-29 7-12 8-28 12-25 12-26
        """;

    private const string Ireland = """
        2026: 1-1 2-2 3-17 4-6 5-4 6-1 8-3 10-26 12-25 12-26
        2027: 1-1 2-1 3-17 3-29 5-3 6-7 8-2 10-25 12-25 12-26
        2028: 1-1 2-7 3-17 4-17 5-1 6-5 8-7 10-30 12-25 12-26
        """;

    /// <summary>Proclaimed once, so no rule knows it, for Scotland. The table and the other library (which lists it by hand) have it: the one difference between rules and either.</summary>
    private static readonly LocalDate OnceInScotland = new(2026, 6, 15);

    public static LocalDate[] Of(string list) => list switch
    {
        "england-and-wales" => Dates(EnglandAndWales),
        "scotland" => Dates(Scotland),
        "northern-ireland" => Dates(NorthernIreland),
        _ => Dates(Ireland),
    };

    [Theory]
    [InlineData("england-and-wales")]
    [InlineData("scotland")]
    [InlineData("northern-ireland")]
    [InlineData("ireland")]
    public void The_rules_give_the_listed_days_and_no_others(string list) =>
        Assert.Equal(Of(list).Where(d => list != "scotland" || d != OnceInScotland), Enumerable.Range(2026, 3).SelectMany(y => HolidayRules.Of(list, y)));

    [Theory]
    [InlineData("england-and-wales", UKBankHoliday.UkCountries.England)]
    [InlineData("england-and-wales", UKBankHoliday.UkCountries.Wales)]
    [InlineData("northern-ireland", UKBankHoliday.UkCountries.NorthernIreland)]
    [InlineData("scotland", UKBankHoliday.UkCountries.Scotland)]
    public void The_rules_agree_with_another_library(string list, UKBankHoliday.UkCountries country) =>
        Assert.Equal(Enumerable.Range(2026, 10).SelectMany(y => HolidayRules.Of(list, y)), Others(new UKBankHoliday(country)).Where(d => list != "scotland" || d != OnceInScotland));

    [Fact]
    public void The_rules_for_Ireland_agree_with_another_library() =>
        Assert.Equal(Enumerable.Range(2026, 10).SelectMany(y => HolidayRules.Of("ireland", y)), Others(new IrelandPublicHoliday()));

    [Theory]
    [InlineData("england-and-wales")]
    [InlineData("scotland")]
    [InlineData("northern-ireland")]
    [InlineData("ireland")]
    public void The_table_of_the_guidance_holds_the_listed_days_and_no_others(string list)
    {
        var table = Content.Guidance.Tables.Holidays.Single(h => h.Id == list);

        Assert.Equal(Of(list), table.Days.Select(d => d.Date));
        Assert.Equal((new(2026, 1, 1), new LocalDate(2028, 12, 31)), (table.KnownFrom, table.KnownUntil));
    }

    /// <summary>The table against the other library: nothing is in one and not in the other, the day proclaimed for Scotland included.</summary>
    [Theory]
    [InlineData("england-and-wales", UKBankHoliday.UkCountries.England)]
    [InlineData("england-and-wales", UKBankHoliday.UkCountries.Wales)]
    [InlineData("northern-ireland", UKBankHoliday.UkCountries.NorthernIreland)]
    [InlineData("scotland", UKBankHoliday.UkCountries.Scotland)]
    public void The_table_of_the_guidance_agrees_with_another_library(string list, UKBankHoliday.UkCountries country) =>
        Assert.Equal(Others(new UKBankHoliday(country)).Where(d => d.Year <= 2028), Content.Guidance.Tables.Holidays.Single(h => h.Id == list).Days.Select(d => d.Date));

    [Fact]
    public void The_table_for_Ireland_agrees_with_another_library() =>
        Assert.Equal(Others(new IrelandPublicHoliday()).Where(d => d.Year <= 2028), Content.Guidance.Tables.Holidays.Single(h => h.Id == "ireland").Days.Select(d => d.Date));

    [Fact]
    public void Every_nation_has_its_list() => Assert.Equal(
        ["england-and-wales", "england-and-wales", "ireland", "northern-ireland", "scotland"],
        Content.Guidance.Nations.Select(n => n.Holidays).Order(StringComparer.Ordinal));

    /// <summary>Dates derived by the standard algorithm; 2038 is the latest possible.</summary>
    [Theory]
    [InlineData(2024, 3, 31)]
    [InlineData(2025, 4, 20)]
    [InlineData(2026, 4, 5)]
    [InlineData(2027, 3, 28)]
    [InlineData(2028, 4, 16)]
    [InlineData(2038, 4, 25)]
    public void Easter_Sunday_falls_on(int year, int month, int day) => Assert.Equal(new(year, month, day), Easter.Sunday(year));

    /// <summary>Past years as the government published them for England and Wales and for Scotland, one-off days left out (read): they hold each kind of substitute.</summary>
    [Theory]
    [InlineData("england-and-wales", 2021, "1-1 4-2 4-5 5-3 5-31 8-30 12-27 12-28")]
    [InlineData("england-and-wales", 2023, "1-2 4-7 4-10 5-1 5-29 8-28 12-25 12-26")]
    [InlineData("scotland", 2021, "1-1 1-4 4-2 5-3 5-31 8-2 11-30 12-27 12-28")]
    [InlineData("scotland", 2022, "1-3 1-4 4-15 5-2 5-30 8-1 11-30 12-26 12-27")]
    public void Past_substitutes_fell_where_the_rules_put_them(string list, int year, string days) =>
        Assert.Equal(Dates($"{year}: {days}"), HolidayRules.Of(list, year));

    private static IEnumerable<LocalDate> Others(PublicHolidayBase holidays) =>
        Enumerable.Range(2026, 10).SelectMany(holidays.PublicHolidays).Select(LocalDate.FromDateTime).Order();

    private static LocalDate[] Dates(string table) =>
    [
        .. from line in table.Split('\n')
           let parts = line.Split(": ")
           from day in parts[1].Split(' ')
           let numbers = day.Split('-')
           select new LocalDate(int.Parse(parts[0], null), int.Parse(numbers[0], null), int.Parse(numbers[1], null)),
    ];
}
