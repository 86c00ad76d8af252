namespace CoachOffice.UseCases.FollowUps;

/// <summary>One block of a letter: a paragraph, a list or a link on a line of its own.</summary>
public sealed record LetterBlock(string Kind, IReadOnlyList<string> Lines)
{
    private const string Dash = "- ";

    /// <summary>As it stands in the text form.</summary>
    public string AsText => string.Join("\n", Kind == "list" ? Lines.Select(line => Dash + line) : Lines);

    /// <summary>Blocks are set apart by empty lines.</summary>
    public static IReadOnlyList<LetterBlock> Of(string text) =>
        [.. text.ReplaceLineEndings("\n").Split("\n\n").Select(part => part.Split('\n', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries))
            .Where(lines => lines.Length > 0).Select(Block)];

    private static LetterBlock Block(string[] lines)
    {
        if (lines.All(line => line.StartsWith(Dash, StringComparison.Ordinal))) return new LetterBlock("list", [.. lines.Select(line => line[Dash.Length..])]);
        var isLink = lines.Length == 1 && Uri.TryCreate(lines[0], UriKind.Absolute, out var address) && address.Scheme is "http" or "https";
        return new LetterBlock(isLink ? "link" : "paragraph", lines);
    }
}
