using Microsoft.AspNetCore.Mvc.ViewFeatures;

namespace CoachOffice.Web.Shell;

/// <summary>Carries a <see cref="Notice"/> over the redirect after a save.</summary>
internal static class Notices
{
    private const string Sentence = "notice";
    private const string Undo = "notice-undo";

    public static void Leave(this ITempDataDictionary tempData, Notice notice)
    {
        tempData[Sentence] = notice.Sentence;
        tempData[Undo] = notice.UndoAction;
    }

    public static Notice? Take(ITempDataDictionary tempData) =>
        tempData[Sentence] is string sentence ? new Notice(sentence, tempData[Undo] as string) : null;
}
