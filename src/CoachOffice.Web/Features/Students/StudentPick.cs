using CoachOffice.UseCases.Students;

namespace CoachOffice.Web.Features.Students;

/// <summary>Finding a student to put somewhere: a search that posts, and a button beside each student found.</summary>
/// <param name="Text">What was searched for; empty before the first search.</param>
/// <param name="Found">Who was found.</param>
/// <param name="Handler">The page's handler that the buttons send to.</param>
/// <param name="Action">Words on the buttons.</param>
public sealed record StudentPick(string Text, IReadOnlyList<StudentRow> Found, string Handler, string Action);
