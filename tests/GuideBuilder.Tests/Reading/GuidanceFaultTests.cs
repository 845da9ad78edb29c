namespace GuideBuilder.Tests.Reading;

public sealed class GuidanceFaultTests
{
    private const string Rule = "title: T, because: B., source: [common-practice]";
    private const string Question = "label: L, wording: W?, data-class: none, ease: look";

    [Theory]
    [InlineData($"- {{id: «site-visit», {Rule}, party: household, takes: {{low: 0, likely: 1, high: 1, unit: hours}}}}", "HB1072")]
    [InlineData($"- {{id: «cutout», {Rule}, party: household, takes: {{low: 0, likely: 1, high: 1, unit: hours}}}}", "HB1072")]
    [InlineData($"- {{id: «Dig_Hole», {Rule}, party: household, takes: {{low: 0, likely: 1, high: 1, unit: hours}}}}", "HB1033")]
    [InlineData($"- {{id: a, {Rule}, party: «houshold», takes: {{low: 0, likely: 1, high: 1, unit: hours}}}}", "HB1073")]
    [InlineData($"- {{id: a, {Rule}, party: household, takes: «{{low: 3, likely: 1, high: 4, unit: hours}}»}}", "HB1078")]
    [InlineData($"- {{id: a, {Rule}, party: household, takes: {{low: «0.5», likely: 1, high: 2, unit: working days}}}}", "HB1027")]
    [InlineData($"- {{id: a, {Rule}, party: household, takes: {{low: 0, likely: 1, high: 2, unit: «work days»}}}}", "HB1034")]
    [InlineData($"- {{id: a, {Rule}, party: household, takes: {{low: 0, likely: 1, high: «9999», unit: hours}}}}", "HB1028")]
    [InlineData($"- «{{id: a, {Rule}, party: household}}»", "HB1021")]
    [InlineData($"- {{id: a, {Rule}, party: household, takes: {{low: 0, likely: 1, high: 1, unit: hours}}, after: [{{step: «nothing»}}]}}", "HB1073")]
    [InlineData($"- {{id: a, {Rule}, party: household, takes: {{low: 0, likely: 1, high: 1, unit: hours}}, after: [«{{step: site-visit, lag: 2}}»]}}", "HB1021")]
    [InlineData($"- {{id: a, {Rule}, party: household, takes: {{low: 0, likely: 1, high: 1, unit: hours}}, after: [«{{step: site-visit, lag: 2, of: working days}}»]}}", "HB1021")]
    [InlineData($"- {{id: a, {Rule}, party: household, takes: {{low: 0, likely: 1, high: 1, unit: hours}}, after: [{{step: site-visit, lag: 2, of: calendar days, whose: «household»}}]}}", "HB1080")]
    [InlineData($"- {{id: a, {Rule}, party: household, takes: {{low: 0, likely: 1, high: 1, unit: hours}}, after: [{{step: site-visit, lag: «-2», of: calendar days}}]}}", "HB1027")]
    [InlineData($"- «{{id: a, {Rule}, party: household, takes: {{low: 0, likely: 1, high: 1, unit: hours}}, after: [{{step: a}}]}}»", "HB1091")]
    [InlineData($"- «{{id: a, {Rule}, party: household, takes: {{low: 0, likely: 1, high: 1, unit: hours}}, after: [{{step: b}}]}}»\n- {{id: b, {Rule}, party: household, takes: {{low: 0, likely: 1, high: 1, unit: hours}}, after: [{{step: a}}]}}", "HB1091")]
    [InlineData($"- {{id: a, {Rule}, party: household, takes: {{low: 0, likely: 1, high: 1, unit: hours}}, needs: [«hole»]}}", "HB1073")]
    [InlineData($"- {{id: a, {Rule}, party: household, takes: {{low: 0, likely: 1, high: 1, unit: hours}}, letter: «cover»}}", "HB1073")]
    [InlineData($"- «{{id: a, {Rule}, party: household, takes: {{low: 0, likely: 1, high: 1, unit: hours}}, meeting: works-day, order: 1}}»", "HB1021")]
    [InlineData($"- {{id: a, {Rule}, party: household, takes: {{low: 0, likely: 1, high: 1, unit: hours}}, «steps-after»: [b]}}", "HB1020")]
    [InlineData($"- {{id: a, {Rule}, party: household, takes: {{low: 0, likely: 1, high: 1, unit: working days}}, work: {{low: place.distance, likely: «home.kind», high: place.distance, a-day: 6}}}}", "HB1073")]
    [InlineData($"- {{id: a, {Rule}, party: household, takes: {{low: 0, likely: 1, high: 1, unit: working days}}, work: {{low: place.distance, likely: place.distance, high: place.distance, a-day: «25»}}}}", "HB1027")]
    [InlineData($"- {{id: a, {Rule}, party: household, takes: {{low: 0, likely: 1, high: 1, unit: hours}}, apart-after: [«nothing»]}}", "HB1073")]
    [InlineData($"- {{id: a, {Rule}, party: household, takes: {{low: 0, likely: 1, high: 1, unit: hours}}, instead-pays: [«nothing»]}}", "HB1073")]
    [InlineData($"- {{id: a, {Rule}, party: household, takes: {{low: 0, likely: 1, high: 1, unit: hours}}, after: [{{step: site-visit, if: {{«home.nothing»: {{is: yes}}}}}}]}}", "HB1061")]
    [InlineData("- {id: a, title: T, because: B., source: «[]», party: household, takes: {low: 0, likely: 1, high: 1, unit: hours}}", "HB1022")]
    [InlineData("- «{id: a, title: T, source: [common-practice], party: household, takes: {low: 0, likely: 1, high: 1, unit: hours}}»", "HB1021")]
    public void A_wrong_step_is_found_where_it_stands(string entry, string code) => SmallGuidance.Finds("steps.yaml", entry, code);

    [Theory]
    [InlineData($"- «{{id: q, {Question}, kind: choice, options: {{a: {{wording: A}}, b: {{wording: B}}}}}}»", "HB1074")]
    [InlineData($"- «{{id: q, {Question}, kind: yes-no}}»", "HB1074")]
    [InlineData($"- «{{id: q, {Question}, kind: choice, options: {{a: {{wording: A, assume: yes}}, b: {{wording: B, assume: yes}}}}}}»", "HB1074")]
    [InlineData($"- {{id: q, {Question}, kind: choice, options: {{a: {{wording: A, assume: yes}}, «unknown»: {{wording: B}}}}}}", "HB1075")]
    [InlineData($"- {{id: q, {Question}, kind: yes-no, options: {{yes: {{assume: yes}}, «maybe»: {{weight: 1}}}}, source: [common-practice]}}", "HB1075")]
    [InlineData($"- {{id: q, {Question}, kind: choice, options: {{a: {{wording: A, assume: yes, weight: «-1»}}}}, source: [common-practice]}}", "HB1076")]
    [InlineData($"- «{{id: q, {Question}, kind: choice, options: {{a: {{wording: A, assume: yes, weight: 0}}}}, source: [common-practice]}}»", "HB1077")]
    [InlineData($"- {{id: q, {Question}, kind: choice, options: {{a: {{wording: Grey, «dull metal», assume: yes}}}}}}", "HB1019")]
    [InlineData($"- {{id: q, {Question}, kind: quantity, unit: «yards», least: 0, most: 1}}", "HB1079")]
    [InlineData($"- «{{id: q, {Question}, kind: quantity, unit: m, least: 3, most: 1}}»", "HB1068")]
    [InlineData($"- {{id: q, {Question}, kind: quantity, unit: m, least: 0, most: «9 kg»}}", "HB1038")]
    [InlineData($"- «{{id: q, {Question}, kind: quantity, unit: m, least: 0, most: 9, if-unknown: [{{value: 3 m}}], source: [common-practice]}}»", "HB1074")]
    [InlineData($"- {{id: q, {Question}, kind: text, «options»: {{a: {{wording: A}}}}}}", "HB1020")]
    [InlineData($"- {{id: q, {Question}, source: [common-practice], kind: text, «if-unknown»: []}}", "HB1020")]
    [InlineData($"- {{id: q, {Question}, kind: date, «unit»: m}}", "HB1020")]
    [InlineData("- «{id: q, label: L, wording: W?, kind: text, ease: look}»", "HB1021")]
    [InlineData("- «{id: q, label: L, wording: W?, kind: text, data-class: none}»", "HB1021")]
    [InlineData("- {id: q, label: L, wording: W?, kind: text, data-class: none, ease: «easy»}", "HB1034")]
    [InlineData($"- {{id: q, {Question}, kind: text, ask-if: {{«home.q»: {{is: yes}}}}}}", "HB1062")]
    [InlineData($"- {{id: q, {Question}, kind: text, ask-if: {{«place.distance»: {{over: 1 m}}}}}}", "HB1062")]
    [InlineData($"- {{id: q, {Question}, kind: text, ask-if: {{«far»: {{is: yes}}}}}}", "HB1062")]
    [InlineData($"- «{{id: q, {Question}, kind: choice, options: {{a: {{wording: A, weight: 2, assume: yes}}}}}}»", "HB1021")]
    [InlineData($"- {{id: q, {Question}, kind: choice, options: {{a: {{wording: A, assume: yes}}}}, weights-if: [{{when: {{home.kind: {{is: flat}}}}, «b»: 2}}], source: [common-practice]}}", "HB1020")]
    [InlineData($"- {{id: «kind», {Question}, kind: text}}", "HB1072")]
    public void A_wrong_question_is_found_where_it_stands(string entry, string code) => SmallGuidance.Finds("questions/home.yaml", entry, code);

    [Theory]
    [InlineData("signal-word: «alarm», before: {severity: 4, likelihood: 2}, after: {severity: 4, likelihood: 1}", "HB1034")]
    [InlineData("signal-word: danger, before: {severity: «6», likelihood: 2}, after: {severity: 1, likelihood: 1}", "HB1027")]
    [InlineData("signal-word: danger, stop-when: S, reviewed-by: «somebody», before: {severity: 5, likelihood: 2}, after: {severity: 5, likelihood: 1}", "HB1082")]
    public void A_wrong_hazard_is_found_where_it_stands(string keys, string code) =>
        SmallGuidance.Finds("hazards.yaml", $"- {{id: h, {Rule}, cause: C, harm: H, controls: [{{level: engineer, what: W, by: household}}], {keys}}}", code);

    [Theory]
    [InlineData("stop-when: S, before: {severity: 5, likelihood: 2}, after: {severity: 5, likelihood: 1}", "HB1021")]
    [InlineData("reviewed-by: not yet reviewed, before: {severity: 5, likelihood: 2}, after: {severity: 5, likelihood: 1}", "HB1021")]
    [InlineData("before: {severity: 3, likelihood: 2}, after: {severity: 3, likelihood: 3}", "HB1081")]
    public void A_hazard_without_what_it_needs_is_found(string keys, string code) =>
        SmallGuidance.Finds("hazards.yaml", $"- «{{id: h, {Rule}, signal-word: danger, cause: C, harm: H, controls: [{{level: engineer, what: W, by: household}}], {keys}}}»", code);

    [Theory]
    [InlineData("tables/prices.yaml", "- {id: p, low: «600», likely: £700, high: £800, stated-as: ex VAT, vat: standard, price-year: 2025, index: prices, source: [common-practice]}", "HB1084")]
    [InlineData("tables/prices.yaml", "- {id: p, low: «£600 inc VAT», likely: £700, high: £800, stated-as: ex VAT, vat: standard, price-year: 2025, index: prices, source: [common-practice]}", "HB1084")]
    [InlineData("tables/prices.yaml", "- {id: p, low: £600, likely: «€700», high: £800, stated-as: ex VAT, vat: standard, price-year: 2025, index: prices, source: [common-practice]}", "HB1038", "HB1084")]
    [InlineData("tables/prices.yaml", "- «{id: p, low: £600, likely: £700, high: £800, stated-as: ex VAT, price-year: 2025, index: prices, source: [common-practice]}»", "HB1021")]
    [InlineData("tables/prices.yaml", "- «{id: p, low: £600, likely: £700, high: £800, stated-as: ex VAT, vat: standard, price-year: 2031, index: prices, source: [common-practice]}»", "HB1088")]
    [InlineData("tables/prices.yaml", "- {id: p, low: £600, likely: £700, high: £800, stated-as: ex VAT, vat: standard, price-year: 2025, index: prices, nations: [«wales»], source: [common-practice]}", "HB1073")]
    [InlineData("tables/prices.yaml", "- «{id: p, low: £600, likely: £700, high: £800, stated-as: ex VAT, vat: here, price-year: 2025, index: prices, source: [common-practice]}»", "HB1097")]
    [InlineData("tables/vat.yaml", "- {id: v, title: T, england: 20 %, «wales»: 20 %, source: [common-practice]}", "HB1020")]
    [InlineData("tables/index.yaml", "- {id: i, title: T, years: {2025: «0»}, source: [common-practice]}", "HB1085")]
    [InlineData("tables/regions.yaml", "- {id: r, factors: {«london»: 1.3}, source: [common-practice]}", "HB1066")]
    [InlineData("tables/holidays.yaml", "- {id: h, known-until: 2028-12-31, days: [{date: «2026-02-29», name: N}], source: [common-practice]}", "HB1031")]
    [InlineData("tables/soils.yaml", "- {id: «clay», source: [common-practice]}", "HB1072")]
    [InlineData("costs.yaml", $"- {{id: c, {Rule}, invoiced-by: household, price: alteration, quantity: «home.kind»}}", "HB1073")]
    [InlineData("consents.yaml", $"- {{id: c, {Rule}, kind: «licence»}}", "HB1034")]
    [InlineData("clocks.yaml", $"- {{id: c, {Rule}, party: household, starts: {{event: «asked»}}, limit: 5, of: working days}}", "HB1034")]
    [InlineData("ways.yaml", $"- {{id: w, {Rule}, applies-if: {{«way»: {{is: outside-cabinet}}}}}}", "HB1062")]
    [InlineData("parties.yaml", $"- {{id: p, {Rule}, works: «[]»}}", "HB1022")]
    [InlineData("parties.yaml", $"- {{id: p, {Rule}, applies-if: {{«plan.months»: {{at-least: 11}}}}}}", "HB1062")]
    [InlineData("sources.yaml", "- {id: s, title: T, publisher: P, mark: read, address: «javascript:alert(1)»}", "HB1087")]
    [InlineData("pages/more.md", "«»A paragraph.\n", "HB1086")]
    [InlineData("labels.yaml", "- {id: «day», one: x}", "HB1072")]
    [InlineData("labels.yaml", "«»labels: no", "HB1006")]
    [InlineData("glossary.yaml", "- {id: «far», term: T, meaning: M}", "HB1072")]
    public void A_wrong_entry_of_any_other_file_is_found_where_it_stands(string file, string entry, params string[] codes)
    {
        var marked = codes.Length == 2 ? entry.Replace("«", "««", StringComparison.Ordinal) : entry;
        SmallGuidance.Finds(file, marked, codes);
    }

    [Theory]
    [InlineData("id: nation", "id: country")]
    [InlineData("ireland: {wording: Ireland}", "wales: {wording: Wales}")]
    public void The_nation_must_be_asked_as_the_guidance_lists_it(string right, string wrong) =>
        Assert.Equal(["HB1089"], SmallGuidance.With("questions/home.yaml", SmallGuidance.Files["questions/home.yaml"].Replace(right, wrong, StringComparison.Ordinal)).Faults.Select(f => f.Code));

    [Theory]
    [InlineData("network-emergency: 105", "network-emergency: 106", "HB1098")]
    [InlineData("source: network-page", "source: common-practice", "HB1099")]
    public void An_emergency_number_is_printed_only_where_somebody_read_it(string right, string wrong, string code) =>
        Assert.Equal([code], SmallGuidance.With("guidance.yaml", SmallGuidance.Files["guidance.yaml"].Replace(right, wrong, StringComparison.Ordinal)).Faults.Select(f => f.Code));
}
