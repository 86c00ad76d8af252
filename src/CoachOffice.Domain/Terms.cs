using System.Collections.Concurrent;
using System.Collections.Frozen;
using System.Text;

namespace CoachOffice.Domain;

/// <summary>The written form of the closed word lists: <c>Region.LowerBack</c> is <c>lower-back</c> in files, forms and drafts.</summary>
public static class Terms
{
    private static readonly ConcurrentDictionary<Type, IReadOnlyDictionary<string, Enum>> Lists = new();

    /// <summary>The word for a member, in kebab-case.</summary>
    public static string Of(Enum member) => Kebab(member.ToString());

    /// <summary>The word for a member, in kebab-case.</summary>
    public static string Of<T>(T member)
        where T : struct, Enum => Words<T>.Known.TryGetValue(member, out var word) ? word : Of((Enum)member);

    /// <summary>All words of a list, in the order of the list.</summary>
    public static IReadOnlyList<string> All<T>()
        where T : struct, Enum => [.. List(typeof(T)).Keys];

    /// <summary>Reads a word; false when it is not in the list. Case matters.</summary>
    public static bool TryParse<T>(string? word, out T member)
        where T : struct, Enum
    {
        if (word is not null && List(typeof(T)).TryGetValue(word, out var found))
        {
            member = (T)found;
            return true;
        }

        member = default;
        return false;
    }

    /// <summary>Reads a word that is known to be good; throws <see cref="FormatException"/> otherwise.</summary>
    public static T Parse<T>(string word)
        where T : struct, Enum => TryParse<T>(word, out var member) ? member : throw new FormatException($"'{word}' is no {typeof(T).Name}.");

    private static IReadOnlyDictionary<string, Enum> List(Type type) =>
        Lists.GetOrAdd(type, static t => Enum.GetValues(t).Cast<Enum>().ToDictionary(Of, e => e, StringComparer.Ordinal));

    private static string Kebab(string name)
    {
        var text = new StringBuilder(name.Length + 4);
        foreach (var letter in name)
        {
            if (char.IsAsciiLetterUpper(letter) && text.Length > 0) text.Append('-');
            text.Append(char.ToLowerInvariant(letter));
        }

        return text.ToString();
    }

    // A draft asks for hundreds of words; each is made once.
    private static class Words<T>
        where T : struct, Enum
    {
        public static readonly FrozenDictionary<T, string> Known = Enum.GetValues<T>().Distinct().ToFrozenDictionary(m => m, m => Of((Enum)m));
    }
}
