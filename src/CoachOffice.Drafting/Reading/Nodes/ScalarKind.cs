namespace CoachOffice.Drafting.Reading.Nodes;

/// <summary>What a single value is.</summary>
internal enum ScalarKind
{
    Text,
    Number,
    Flag,
    Nothing,
}
