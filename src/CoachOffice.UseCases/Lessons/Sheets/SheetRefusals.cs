using CoachOffice.Domain;

namespace CoachOffice.UseCases.Lessons.Sheets;

internal static class SheetRefusals
{
    public static Refusal NotFound => new("sheet-not-found", "There is no such reading sheet of yours.");

    public static Refusal Changed => new(Access.Clash.Code, "The sheet was changed in another window after you opened it; look at it again, then save.");
}
