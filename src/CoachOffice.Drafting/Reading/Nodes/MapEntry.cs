namespace CoachOffice.Drafting.Reading.Nodes;

/// <summary>A name and its value in a mapping.</summary>
/// <param name="Name">The name.</param>
/// <param name="At">Where the name stands.</param>
/// <param name="Value">The value.</param>
internal sealed record MapEntry(string Name, Position At, Node Value);
