using GuideBuilder.Model;
using GuideBuilder.Planning.Calendars;
using GuideBuilder.Planning.Electrical;
using GuideBuilder.Tests.Cases;
using GuideBuilder.Tests.Situations;
using GuideBuilder.Tests.Support;
using NodaTime;
using static GuideBuilder.Tests.Published.ElectricalCase;
using Home = GuideBuilder.Tests.Support.Home;

namespace GuideBuilder.Tests.Published;

/// <summary>Cases 14 to 34 on who does what, on days and on limits: what the law, the networks and the regulators have in print, held against handbooks and calculators. Cases 1 to 13 are those of supply numbers.</summary>
public sealed class RegulationChecks
{
    private const string Subject = "regulation";
    private const string Movers = "Operators' published rules on moving a meter point; Approved Document P, appendix A";
    private const string Networks = "Miss the meter reader (Power NI)";
    private const string Certificates = "Works needing certification (Health and Safety Authority)";
    private const string FlatRights = "General Permitted Development Order 2015, schedule 2, part 1, class A";
    private const string Wayleaves = "Electricity Act 1989, schedule 4, paragraph 6, as quoted in [2025] EWHC 1880 (KB)";
    private const string Disabled = "Electricity Act 1989, schedule 6, paragraph 1";
    private const string Holidays = "Banking and Financial Dealings Act 1971, schedule 1, and its like in the other nations, worked out apart";
    private const string ScottishNotice = "Notice of a Scottish bank holiday on 15 June 2026 (wired-gov)";
    private const string Quotations = "Electricity (Connection Standards of Performance) Regulations 2015, regulation 5(2): £15 a working day, worked out apart";
    private const string Slots = "Electricity and Gas (Standards of Performance) (Suppliers) Regulations 2015, regulation 8";
    private const string Volts = "ESQCR 2002, regulation 27, worked out apart";
    private const string Notice = "Heat pump and vehicle installation process (Northern Powergrid, Energy Networks Association)";
    private const string Sources = "Engineering Recommendations G98 and G99 (Energy Networks Association)";
    private const string Construction = "Construction (Design and Management) Regulations 2015, regulation 7";
    private const string PartP = "Building Regulations 2010, regulation 12(6A) for England and schedule 4 for Wales";
    private const string Warrants = "Regulation of electricians in Scotland (Scottish Government), appendix 3";

    private static void Holds(params string[] cases) =>
        Findings.AreNone(from name in cases let found = Case.In("parties.yaml").Single(c => c.Statement.Letter == name) from missing in found.Home().Missing(found.Statement) select $"{name} {missing}");

    private static void Due(string received, int days, params (string List, string Due)[] due) =>
        Assert.All(due, d => Assert.Equal(Date(d.Due), ClockRunner.Start(Date(received), false, days, DayCount.WorkingDays, WorkingDayCases.Office(d.List)).Due));

    private static LocalDate Date(string text) => NodaTime.Text.LocalDatePattern.Iso.Parse(text).Value;

    [Fact, PublishedCheck(Subject, 14, Movers, CheckMark.Read)]
    public void In_England_operator_supplier_electrician_and_building_control_take_part_and_no_wayleave() => Holds("P14");

    [Fact, PublishedCheck(Subject, 15, Networks, CheckMark.Read)]
    public void In_Northern_Ireland_one_networks_business_moves_both_and_the_supplier_moves_nothing() => Holds("P15");

    [Fact, PublishedCheck(Subject, 16, Certificates, CheckMark.Read)]
    public void In_Ireland_a_completion_certificate_stands_for_the_papers_of_the_United_Kingdom() => Holds("P16");

    [Fact, PublishedCheck(Subject, 17, FlatRights, CheckMark.Memory)]
    public void A_flat_brings_in_the_freeholder_and_has_no_rights_of_a_house() => Holds("P17");

    [Fact, PublishedCheck(Subject, 18, Wayleaves, CheckMark.Read)]
    public void A_route_over_a_neighbours_land_is_settled_before_the_quotation_is_accepted() => Holds("P18");

    [Fact, PublishedCheck(Subject, 19, Disabled, CheckMark.Read)]
    public void For_a_disabled_person_the_meter_moves_free_and_the_cutout_does_not() => Holds("P19");

    [Fact, PublishedCheck(Subject, 20, Holidays, CheckMark.Derived)]
    public void Five_days_over_Easter_2026_end_a_day_sooner_in_Scotland() =>
        Due("2026-04-01", 5, ("england-and-wales", "2026-04-10"), ("scotland", "2026-04-09"), ("northern-ireland", "2026-04-10"));

    [Fact, PublishedCheck(Subject, 21, ScottishNotice, CheckMark.Read)]
    public void The_holiday_of_15_June_2026_holds_in_Scotland_alone() => Due("2026-06-12", 5, ("scotland", "2026-06-22"), ("england-and-wales", "2026-06-19"));

    [Fact, PublishedCheck(Subject, 22, Holidays, CheckMark.Derived)]
    public void The_summer_holiday_of_August_2026_comes_first_in_Scotland() => Due("2026-07-31", 5, ("scotland", "2026-08-10"), ("england-and-wales", "2026-08-07"));

    [Fact, PublishedCheck(Subject, 23, Holidays, CheckMark.Derived)]
    public void Seven_days_over_July_2026_lose_the_13th_in_Northern_Ireland() => Due("2026-07-10", 7, ("northern-ireland", "2026-07-22"));

    [Fact, PublishedCheck(Subject, 24, Holidays, CheckMark.Derived)]
    public void Christmas_2026_takes_two_days_in_England_and_one_in_Ireland() => Due("2026-12-22", 5, ("england-and-wales", "2026-12-31"), ("ireland", "2026-12-30"));

    [Fact, PublishedCheck(Subject, 25, Holidays, CheckMark.Derived)]
    public void Fifteen_days_over_the_new_year_of_2028_end_on_the_17th_or_18th() => Due("2027-12-22", 15, ("england-and-wales", "2028-01-17"), ("scotland", "2028-01-18"));

    [Fact, PublishedCheck(Subject, 26, Holidays, CheckMark.Derived)]
    public void Two_days_from_30_December_2027_end_on_5_January_in_Scotland() => Due("2027-12-30", 2, ("scotland", "2028-01-05"), ("england-and-wales", "2028-01-04"));

    [Fact, PublishedCheck(Subject, 27, Quotations, CheckMark.Derived)]
    public void A_quotation_three_working_days_late_owes_45_pounds_by_the_text_of_2015()
    {
        var home = Home.Given(
            "home: {nation: england, kind: semi}\nwish: {moves: [cutout, meter], reason: [room-needed]}\n"
            + "log:\n  - {on: 2026-04-01, what: applied, step: send-application}\n  - {on: 2026-04-15, what: quoted, step: quotation-received}\n");
        var clock = Assert.Single(home.Plan.Whereabouts.Clocks, c => c.Clock.Id == "clock-quotation-gb");

        Assert.Equal((new LocalDate(2026, 4, 10), 3, 45m), (clock.Due, clock.DaysLate, clock.Owed!.Amount));
        Assert.Contains("Ask which standard applies", clock.Clock.Owes.Words, StringComparison.Ordinal);
    }

    [Fact, PublishedCheck(Subject, 28, Volts, CheckMark.Derived)]
    public void A_declared_230_V_may_be_216_2_to_253_and_50_cycles_49_5_to_50_5()
    {
        Assert.Equal((216.2m, 253.0m), (Declared.Voltage(Figures)!.Value.Least.Amount, Declared.Voltage(Figures)!.Value.Most.Amount));
        Assert.Equal((49.5m, 50.5m), (Declared.Frequency(Figures)!.Value.Least.Amount, Declared.Frequency(Figures)!.Value.Most.Amount));
    }

    [Fact, PublishedCheck(Subject, 29, Notice, CheckMark.Read)]
    public void Sixty_amps_are_13_8_kVA_and_told_afterwards_and_61_are_applied_for()
    {
        Near(13.8m, Power.Apparent(Figures, Amps(60)), 0.001m);
        Assert.Equal(OperatorNotice.TellAfterwards, OperatorNotices.For(Figures, Amps(60), Amps(80), looped: false, worryAboutEquipment: false));
        Assert.Equal(OperatorNotice.ApplyFirst, OperatorNotices.For(Figures, Amps(61), Amps(80), looped: false, worryAboutEquipment: false));
    }

    [Fact, PublishedCheck(Subject, 30, Sources, CheckMark.Read)]
    public void Up_to_3_68_kW_on_a_phase_solar_is_told_afterwards()
    {
        Near(3.68m, Declared.LargestToldAfterwards(Figures), 0);
        Assert.Equal((false, true), (Declared.NeedsApproval(Figures, Kilowatts(3.68m)), Declared.NeedsApproval(Figures, Kilowatts(3.69m))));
    }

    [Fact, PublishedCheck(Subject, 31, Construction, CheckMark.Read)]
    public void A_clients_duties_pass_to_the_contractor_or_with_three_to_the_principal_one() => Holds("P31", "P31-one");

    // The first list had £40; a later reading found £40 proposed and the sum now in force unread, so the handbook says ask.
    [Fact, PublishedCheck(Subject, 32, Slots, CheckMark.Read)]
    public void A_missed_slot_is_paid_for_within_ten_working_days_and_paid_again_when_that_is_late()
    {
        Due("2026-01-12", 10, ("england-and-wales", "2026-01-26"));
        var (first, again) = (Content.Guidance.Clocks.Single(c => c.Id == "clock-meter-missed-gb"), Content.Guidance.Clocks.Single(c => c.Id == "clock-meter-late-payment-gb"));

        Assert.Equal((10, 20, DayCount.WorkingDays), (first.Limit, again.Limit, again.Of));
        Assert.Contains("£40 was proposed. Ask for the sum now in force", first.Owes.Words, StringComparison.Ordinal);
        Assert.Contains("One more payment of the same kind", again.Owes.Words, StringComparison.Ordinal);
    }

    [Fact, PublishedCheck(Subject, 33, PartP, CheckMark.Read)]
    public void Work_in_a_kitchen_is_notified_in_Wales_and_not_in_England() => Holds("P33", "P33-kitchen", "P33-england");

    [Fact, PublishedCheck(Subject, 34, Warrants, CheckMark.Read)]
    public void A_flat_in_Scotland_asks_for_a_warrant_and_a_low_house_does_not() => Holds("P34", "P34-house");
}
