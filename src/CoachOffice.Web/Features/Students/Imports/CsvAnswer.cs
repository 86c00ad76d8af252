namespace CoachOffice.Web.Features.Students.Imports;

/// <summary>How a list is answered (RFC 4180, section 3).</summary>
internal static class CsvAnswer
{
    public const string Type = "text/csv; charset=utf-8; header=present";
}
