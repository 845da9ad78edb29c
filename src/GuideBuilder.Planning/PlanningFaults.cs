namespace GuideBuilder.Planning;

/// <summary>The faults of planning. Each is a hole in the guidance that only a particular home brings to light; what a person answered is judged by Reading.</summary>
public static class PlanningFaults
{
    /// <summary>Facts that rest on each other. Example: fact a asks b, and fact b asks a.</summary>
    public static Fault CircleOfFacts(IEnumerable<string> circle, Place place) => Error(
        "HB2001", place, $"These facts rest on each other: {string.Join(", ", circle)}.", "Let one of them ask only answers.");

    /// <summary>Two rows of a fact that hold at once. Example: a row for cellar and a row for underground, and a home with both.</summary>
    public static Fault RowsOverlap(string fact, Place place) => Error(
        "HB2002", place, $"Two rows of {fact} hold at once.", "Write rows that exclude each other.");

    /// <summary>A way whose condition asks a fact that follows from the way. Example: way kiosk asks fact cabinet-needed, which asks way.</summary>
    public static Fault WayAsksWay(string way, Place place) => Error(
        "HB2003", place, $"The way {way} is judged by a fact that follows from the way itself.", "Ask only answers and facts that do not ask the way.");

    /// <summary>No way is left. Example: every way asks an owner, and the home is rented.</summary>
    public static Fault NoWayLeft() => Error(
        "HB2004", Place.None, "Every way is ruled out for this home.", "Let one way, such as leaving things where they are, always remain.");

    /// <summary>A step by a party that never works, or is not in the guidance. Example: works: [].</summary>
    public static Fault NoCalendar(string step, string party, Place place) => Error(
        "HB2005", place, $"The step {step} falls to {party}, which has no working day.", "Name a party with at least one working day.");

    /// <summary>Steps that wait for each other. Example: a comes after b, and b after a.</summary>
    public static Fault CircleOfSteps(IEnumerable<string> ring, Place place) => Error(
        "HB2006", place, $"These steps wait for each other: {string.Join(", ", ring)}.", "Take out one of the links.");

    /// <summary>A price whose index has no value for its year. Example: price-year 2019 and an index that begins with 2020.</summary>
    public static Fault NoIndexValue(string price, string index, int year, Place place) => Error(
        "HB2008", place, Invariant($"The price {price} is of {year}, for which {index} has no value."), "Add the year to the index, or restate the price.");

    /// <summary>A price in another money than the home's. Example: a price in £ for a home in Ireland.</summary>
    public static Fault OtherMoney(string cost, string currency, Place place) => Warning(
        "HB2009", place, $"The cost {cost} is priced in other money than {currency} and is left out of the sum.", "Give that nation its own price and cost.");

    /// <summary>A nation without its list of holidays. Example: holidays: wales, and no such list.</summary>
    public static Fault NoHolidays(string list, Place place) => Error(
        "HB2010", place, $"There is no list of holidays {list}.", "Add it, or name another.");

    /// <summary>A meeting on no day, whatever a home answers. Example: one party works on Mondays, another on Tuesdays.</summary>
    public static Fault NoCommonDay(IEnumerable<string> steps, Place place) => Error(
        "HB2011", place, $"The parties of these steps share no weekday: {string.Join(", ", steps)}.", "Let their parties share a working day.");

    private static Fault Error(string code, Place place, string wrong, string right) => new(code, Severity.Error, place, wrong, right);

    private static Fault Warning(string code, Place place, string wrong, string right) => new(code, Severity.Warning, place, wrong, right);
}
