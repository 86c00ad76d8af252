namespace CoachOffice.UseCases.Students;

/// <summary>Mail files of one student, named after their messages.</summary>
/// <param name="Paths">Full paths; a missing one is no fault.</param>
public sealed record LettersOnDisk(IReadOnlyList<string> Paths)
{
    /// <summary>Removes them.</summary>
    public void Delete()
    {
        foreach (var path in Paths.Where(File.Exists)) File.Delete(path);
    }
}
