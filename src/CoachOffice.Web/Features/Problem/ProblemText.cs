namespace CoachOffice.Web.Features.Problem;

/// <summary>What went wrong with a request, said to the person.</summary>
/// <param name="Title">The page's heading.</param>
/// <param name="Sentence">What is wrong and what would be right.</param>
internal sealed record ProblemText(string Title, string Sentence);
