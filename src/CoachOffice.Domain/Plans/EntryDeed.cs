namespace CoachOffice.Domain.Plans;

/// <summary>What can be done with an entry of the rulebook.</summary>
public enum EntryDeed
{
    /// <summary>It says something else from now on, or is new.</summary>
    Write,

    /// <summary>It is no part of the book any more. A removed drill leaves the ladders, a removed pattern its neighbours and takes its cases along.</summary>
    Remove,

    /// <summary>The own change is dropped; it says again what the program brings.</summary>
    BackToShipped,
}
