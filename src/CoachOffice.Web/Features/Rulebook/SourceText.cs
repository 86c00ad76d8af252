using CoachOffice.Domain.Measuring;

namespace CoachOffice.Web.Features.Rulebook;

/// <summary>Where a number or rule comes from, with the mark of what is not published.</summary>
internal static class SourceText
{
    public static string Of(SourceMark source) => source.IsPublished ? source.Text : $"{source.Text} (provisional)";
}
