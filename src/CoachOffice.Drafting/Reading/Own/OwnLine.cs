using CoachOffice.Domain.Plans;
using CoachOffice.Drafting.Reading.Nodes;

namespace CoachOffice.Drafting.Reading.Own;

/// <summary>One line under <c>removed</c> or <c>replaced</c>.</summary>
internal sealed record OwnLine(EntryId Id, string? Was, Node Place);
