using System.Text.Json.Nodes;
using CoachOffice.Domain.Plans.Drafts;
using CoachOffice.Domain.Tests.Plans.Drafts;

namespace CoachOffice.Domain.Tests.Regressions;

public sealed class MissingTextInDraftTests
{
    // A null among the strengths or the facts of a step was read as a text, and failed only where a page wrote it.
    [Fact]
    public void A_null_in_a_list_of_texts_is_no_draft()
    {
        var draft = JsonNode.Parse(DraftSample.Written)!;
        draft["strengths"]!.AsArray().Add(null);
        Assert.Throws<FormatException>(() => DraftJson.Read(draft.ToJsonString()));
    }
}
