using GuideBuilder.Rendering.Blocks;
using GuideBuilder.Rendering.Pages;

namespace GuideBuilder.Rendering.Sheets;

/// <summary>What the supply number says of the network; shown only where the edition may print the number.</summary>
internal static class SupplyBlock
{
    private const string Number = "home.supply-number";

    /// <summary>The verdicts on the number, as a list.</summary>
    internal static ImmutableArray<Block> Of(Bindery bindery)
    {
        var answer = bindery.Plan.Answers.ByName.GetValueOrDefault(Number);
        if (answer?.Standing == Standing.NotAsked)
        {
            return [];
        }

        var text = answer is { Standing: Standing.Known } ? answer.Value switch
        {
            Value.NumberName name => name.Text,
            Value.Words words => words.Text,
            _ => null,
        } : null;
        return text is null ? [Make.Say(bindery, "supply-unknown")]
            : !bindery.Answers.MayPrint(answer!.Question.Data) ? [Make.Say(bindery, "supply-kept-back")]
            : SupplyNumbers.Read(text, bindery.Plan.Nation.Id, bindery.Guidance.Tables) is { } number ? Make.List(Lines(bindery, text, number).Select(Phrase.Of))
            : [Make.Say(bindery, "supply-unknown")];
    }

    private static IEnumerable<string> Lines(Bindery bindery, string text, SupplyNumber number)
    {
        yield return bindery.Say($"supply-kind-{NameOf(number.Kind)}", ("0", text));
        var area = bindery.Guidance.Tables.Rows.FirstOrDefault(r => r.Id == $"area-{number.Area}");
        if (number.IsIndependent)
        {
            yield return number.IsKnownArea ? bindery.Say("supply-independent", ("0", area?.Cells["operator"].Words ?? bindery.Say("supply-independent-other"))) : bindery.Say("supply-no-network");
        }
        else if (area is not null)
        {
            yield return bindery.Say("supply-area", ("0", number.Area), ("1", area.Cells["title"].Words), ("2", area.Cells["operator"].Words));
        }

        if (number.Kind == SupplyNumberKind.NotASupplyNumber)
        {
            yield return bindery.Say($"supply-flaw-{NameOf(number.Flaw)}");
        }

        if (number.IsOutside(bindery.Plan.Nation.Id))
        {
            yield return bindery.Say("supply-outside");
        }

        if (!number.BeginsAsUsual)
        {
            yield return bindery.Say("supply-unusual");
        }

        if (number.Top is { IsBusiness: true })
        {
            yield return bindery.Say("supply-business");
        }
    }

    private static string NameOf(SupplyNumberKind kind) => kind switch
    {
        SupplyNumberKind.NotASupplyNumber => "none",
        SupplyNumberKind.ElectricityGreatBritain => "britain",
        SupplyNumberKind.ElectricityNorthernIreland => "northern-ireland",
        SupplyNumberKind.ElectricityIreland => "ireland",
        SupplyNumberKind.Gas => "gas",
        _ => throw new UnreachableException(),
    };

    private static string NameOf(SupplyNumberFlaw flaw) => flaw switch
    {
        SupplyNumberFlaw.None or SupplyNumberFlaw.Length => "length",
        SupplyNumberFlaw.NotDigits => "not-digits",
        SupplyNumberFlaw.UnusedArea => "unused-area",
        SupplyNumberFlaw.CheckDigit => "check-digit",
        SupplyNumberFlaw.ProfileClass => "profile-class",
        SupplyNumberFlaw.Beginning => "beginning",
        _ => throw new UnreachableException(),
    };
}
