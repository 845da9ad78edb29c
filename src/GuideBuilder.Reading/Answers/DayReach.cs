namespace GuideBuilder.Reading;

/// <summary>Whether days lie where a plan can use them, as seen from the day on which the answers are read; on no day in particular, everything does.</summary>
internal sealed class DayReach(LocalDate? today, FaultList faults)
{
    /// <summary>Adds a fault for each answer that binds the plan to a day that it cannot reach.</summary>
    public void Check(IEnumerable<Given.Answered> answers)
    {
        foreach (var answer in answers.Where(a => PlanReach.Binding.Contains(a.Name)))
        {
            if (answer is { Value: Value.Day { Date: var day }, Place: { } place })
            {
                Check(day, place);
            }
        }
    }

    /// <summary>Adds a fault for a day that no plan of today reaches.</summary>
    public void Check(LocalDate day, Place place)
    {
        if (today is { } now && !PlanReach.Of(now).Contains(day))
        {
            faults.Add(ReadingFaults.TooFarOff(place, day, PlanReach.Of(now)));
        }
    }

    /// <summary>Adds a fault for a day on which nothing can have happened yet, or too long ago to count from.</summary>
    public void CheckPast(LocalDate day, Place place)
    {
        if (day > today)
        {
            faults.Add(ReadingFaults.NotYet(place, day, today.Value));
        }
        else
        {
            Check(day, place);
        }
    }
}
