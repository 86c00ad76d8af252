namespace CoachOffice.UseCases.Rulebook;

/// <summary>The rulebook that comes with the program.</summary>
/// <param name="Directory">Where its .yaml files lie.</param>
public sealed record ShippedRules(string Directory)
{
    /// <summary>Beside the program; when it runs from its source tree without a copy there, in the tree.</summary>
    public static ShippedRules Find()
    {
        for (var folder = new DirectoryInfo(AppContext.BaseDirectory); folder is not null; folder = folder.Parent)
        {
            var rules = Path.Combine(folder.FullName, "rules");
            if (File.Exists(Path.Combine(rules, "rulebook.yaml"))) return new ShippedRules(rules);
        }

        return new ShippedRules(Path.Combine(AppContext.BaseDirectory, "rules"));
    }
}
