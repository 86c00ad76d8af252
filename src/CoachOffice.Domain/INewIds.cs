namespace CoachOffice.Domain;

/// <summary>The one door for new identifiers: seeded in demo and tests, version 7 GUIDs otherwise.</summary>
public interface INewIds
{
    /// <summary>A new identifier, never empty.</summary>
    Guid Next();
}
