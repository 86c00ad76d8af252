using CoachOffice.Drafting.Reading;

namespace CoachOffice.UseCases.Rulebook;

/// <summary>What an owner should know of the rulebook in force.</summary>
/// <param name="Waits">True when the program brought a newer book that the own changes do not fit, so that it is not used yet.</param>
/// <param name="Faults">What does not fit it.</param>
/// <param name="Warnings">Own changes whose shipped entry has changed since they were made.</param>
public sealed record RulebookNotice(bool Waits, IReadOnlyList<Fault> Faults, IReadOnlyList<Fault> Warnings);
