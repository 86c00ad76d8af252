using System.Globalization;
using System.Text;
using CoachOffice.Domain.Plans;

namespace CoachOffice.Drafting.Catalogue;

/// <summary>The whole rulebook as one page of Markdown for a person: what is read, what is wanted, which causes are known and why, and what is done about them.</summary>
public static class RulebookCatalogue
{
    /// <summary>The page, lines ended by LF. The same book gives the same page.</summary>
    public static string Write(Rulebook book)
    {
        ArgumentNullException.ThrowIfNull(book);
        var page = new StringBuilder();
        page.Append(string.Create(CultureInfo.InvariantCulture, $"""
            # {book.Name}

            Written by the program from the files beside it (`catalogue`), so change those and not this page.
            {book.Measures.Count} measures, {book.Patterns.Count} patterns, {book.Progressions.Count} ladders of {book.Drills.Count} drills, {book.Cautions.Count} cautions.

            - [What is read](#what-is-read)
            - [What is left alone](#what-is-left-alone)
            - [Causes](#causes)
            - [Ladders](#ladders)
            - [Drills](#drills)
            - [Cautions](#cautions)

            Ranges and causes marked *provisional* are common practice without a published source: a coach's to judge and to change.
            Lead and trail are the sides nearer to and further from the target. A fault is a measure with the side on which it is out.

            """).ReplaceLineEndings("\n"));
        MeasurePages.Write(page, book);
        PatternPages.Write(page, book);
        DrillPages.Write(page, book);
        return page.ToString();
    }
}
