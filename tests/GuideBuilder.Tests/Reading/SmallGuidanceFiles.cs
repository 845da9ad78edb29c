namespace GuideBuilder.Tests.Reading;

/// <summary>The files of the small guidance.</summary>
internal static class SmallGuidanceFiles
{
    public static IReadOnlyDictionary<string, string> All { get; } = new Dictionary<string, string>(StringComparer.Ordinal)
    {
        ["guidance.yaml"] = """
            - id: guidance
              title: A small guidance
              edition-date: 2026-11-24
              review-by: 2027-05-24
              languages: [en-GB]
              nations:
                - {id: england, title: England, holidays: england-and-wales, currency: £, bodies: {network-emergency: 105}, numbers: [{number: "105", source: network-page}]}
                - {id: ireland, title: Ireland, holidays: in-ireland, currency: €}

            """,
        ["questions/home.yaml"] = """
            - id: nation
              label: Nation
              wording: In which nation does the home stand?
              kind: choice
              data-class: none
              ease: look
              options:
                england: {wording: England, assume: yes}
                ireland: {wording: Ireland}
            - id: kind
              label: Kind of home
              wording: What kind of home is it?
              kind: choice
              data-class: none
              ease: look
              options:
                detached: {wording: A house on its own, weight: 2}
                flat: {wording: A flat, weight: 1, assume: yes}
                boat: {wording: A boat, weight: 0.1}
              source: [common-practice]
            - {id: storeys, label: Storeys, wording: How many?, kind: quantity, data-class: none, ease: look, least: 1, most: 20}
            - id: block-stair
              label: Stair
              wording: How many stairs has the block?
              kind: choice
              data-class: none
              ease: look
              ask-if: {home.kind: {is: flat}}
              options: {single: {wording: One, assume: yes}, more: {wording: More}}
            - {id: looped, label: Looped, wording: Is the service looped?, kind: yes-no, data-class: none, ease: look, options: {yes: {assume: yes}}}
            - {id: signs, label: Signs, wording: Which signs are there?, kind: several, data-class: none, ease: look, options: {smoke: {wording: Smoke}, wet: {wording: Wet}, rust: {wording: Rust}}}
            - {id: address, label: Address, wording: Where is it?, kind: text, data-class: personal, ease: look}
            - {id: supply-number, label: Supply number, wording: Which is it?, kind: number-name, data-class: personal, ease: look}

            """,
        ["questions/wish.yaml"] = """
            - {id: moves, label: What moves, wording: What is to move?, kind: several, data-class: none, ease: look, options: {cutout: {wording: Cutout}, meter: {wording: Meter}}}

            """,
        ["questions/place.yaml"] = """
            - {id: distance, label: Distance, wording: How far?, kind: quantity, data-class: none, ease: look, unit: m, least: 0, most: 100}
            - {id: offer, label: Offer, wording: What was offered?, kind: quantity, data-class: none, ease: look, unit: £, least: 0, most: 50000}

            """,
        ["questions/dates.yaml"] = """
            - {id: needed-by, label: Needed by, wording: By when?, kind: date, data-class: none, ease: look}
            - {id: away, label: Away, wording: When is nobody there?, kind: days, data-class: absence, ease: look}

            """,
        ["facts.yaml"] = """
            - id: far
              title: The new place is far
              kind: yes-no
              rows: [{when: {place.distance: {over: 3 m}}, value: yes}]
              otherwise: no
              because: Far is further than three metres.
              source: [common-practice]

            """,
        ["parties.yaml"] = """
            - {id: household, title: You, because: It is your home., source: [common-practice], works: [saturday, sunday]}
            - {id: network-operator, title: Network operator, because: It owns the cutout., source: [common-practice]}

            """,
        ["ways.yaml"] = """
            - {id: outside-cabinet, title: A cabinet outside, because: It is wished., source: [common-practice]}

            """,
        ["steps.yaml"] = """
            - id: site-visit
              title: Somebody looks
              party: network-operator
              takes: {low: 0, likely: 1, high: 2, unit: working days}
              because: A quotation needs a look.
              source: [common-practice]
            - id: quotation-received
              title: The quotation comes
              party: network-operator
              takes: {low: 5, likely: 10, high: 20, unit: working days}
              after: [{step: site-visit, lag: 2, of: working days, whose: network-operator}]
              pays: [operator-alteration]
              because: Nothing is agreed before it.
              source: [common-practice]

            """,
        ["costs.yaml"] = """
            - {id: operator-alteration, title: Alteration, invoiced-by: network-operator, price: alteration, due: quotation-received, because: It is charged., source: [common-practice]}

            """,
        ["tables/prices.yaml"] = """
            - {id: alteration, low: £600, likely: "£1,100", high: "£2,000", stated-as: inc VAT, vat: standard, price-year: 2025, index: prices, source: [common-practice]}

            """,
        ["tables/vat.yaml"] = """
            - {id: standard, title: Standard rate, england: 20 %, ireland: 23 %, source: [common-practice]}
            - {id: here, title: Only in England, england: 5 %, source: [common-practice]}

            """,
        ["tables/index.yaml"] = """
            - {id: prices, title: Prices, years: {2025: 138.5, 2026: 141}, source: [common-practice]}

            """,
        ["tables/holidays.yaml"] = """
            - {id: england-and-wales, known-until: 2028-12-31, days: [{date: 2026-12-25, name: Christmas Day}], source: [common-practice]}
            - {id: in-ireland, known-until: 2028-12-31, days: [{date: 2026-12-25, name: Christmas Day}], source: [common-practice]}

            """,
        ["tables/soils.yaml"] = """
            - {id: clay, density: 1.8 t, note: stands well when dry, telephone: "105", source: [common-practice]}

            """,
        ["sources.yaml"] = """
            - {id: common-practice, title: Common practice, publisher: nobody, mark: memory}
            - {id: network-page, title: Whom to ring, publisher: the network, mark: read, checked: 2026-11-24}

            """,
        ["labels.yaml"] = "- {id: day, one: day, other: days}\n",
        ["glossary.yaml"] = "- {id: cutout, term: cutout, also: [service head], meaning: The box where the cable ends., source: [common-practice]}\n",
        ["pages/cover.md"] = "# Cover\n\nWords.\n",
        ["letters/application.md"] = "# Application\n\nWords.\n",
        ["look/stylesheet.css"] = "body {}\n",
        ["README.md"] = "For editors.\n",
    };
}
