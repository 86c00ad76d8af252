namespace CoachOffice.Web.Features.Problem;

/// <summary>What went wrong with a request, said to the person.</summary>
/// <param name="Title">The page's heading.</param>
/// <param name="Sentence">What is wrong and what would be right.</param>
/// <param name="ForStudent">True behind a private link, where the office has nothing to offer.</param>
internal sealed record ProblemText(string Title, string Sentence, bool ForStudent = false);
