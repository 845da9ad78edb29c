namespace GuideBuilder.Model;

/// <summary>What a unit measures; quantities of one dimension can be compared.</summary>
public enum Dimension
{
    /// <summary>A plain number, such as a count or a year.</summary>
    Number,

    /// <summary>A share; base unit one, so 20 % is 0.2.</summary>
    Share,

    /// <summary>Base unit metre.</summary>
    Length,

    /// <summary>Base unit square metre.</summary>
    Area,

    /// <summary>Base unit cubic metre.</summary>
    Volume,

    /// <summary>Base unit kilogram.</summary>
    Mass,

    /// <summary>Base unit kilowatt.</summary>
    Power,

    /// <summary>Base unit kilovolt-ampere.</summary>
    ApparentPower,

    /// <summary>Base unit ampere.</summary>
    Current,

    /// <summary>Base unit volt.</summary>
    Voltage,

    /// <summary>Base unit ohm.</summary>
    Resistance,

    /// <summary>Base unit milliohm per metre.</summary>
    ResistancePerLength,

    /// <summary>Base unit calendar day.</summary>
    CalendarTime,

    /// <summary>Base unit working day; never converted to calendar days without a calendar.</summary>
    WorkingTime,

    /// <summary>Base unit hour.</summary>
    ClockTime,

    /// <summary>Pounds sterling.</summary>
    Pounds,

    /// <summary>Euros.</summary>
    Euros,
}
