using System.Text.Json.Nodes;
using CoachOffice.Domain.Plans;
using CoachOffice.Drafting.Patterns;

namespace CoachOffice.Drafting.Writing;

/// <summary>Conditions of a pattern as the files write them.</summary>
internal static class ConditionTrees
{
    public static JsonNode Of(Condition condition) => condition switch
    {
        AnyOfCondition any => new EntryTree().Nodes("any", any.Any.Select(Of)).Tree,
        SameSideCondition same => new EntryTree().List("same-side", same.Measures.Select(id => id.Value)).Tree,
        _ => ConditionText.Of(condition),
    };
}
