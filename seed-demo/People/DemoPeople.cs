namespace CoachOffice.SeedDemo.People;

/// <summary>Everyone at the academy. All invented; every address ends in .example, which nobody can own (RFC 2606).</summary>
internal static class DemoPeople
{
    /// <summary>In the order in which chance is dealt out: add new ones at the end.</summary>
    public static IReadOnlyList<Persona> All { get; } = [.. PeopleOnTheirWay.All, .. PeopleWithLimits.All, .. YoungPeople.All, .. PeopleOfToday.All, .. PeopleWhoLeft.All, .. PeopleOfTheYear.All];
}
