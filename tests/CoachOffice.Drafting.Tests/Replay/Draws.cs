namespace CoachOffice.Drafting.Tests.Replay;

/// <summary>Drawing from lists and putting something else in one place of them.</summary>
internal static class Draws
{
    public static T OneOf<T>(this Random chance, IReadOnlyList<T> all) => all[chance.Next(all.Count)];

    public static T OneOf<T>(this Random chance)
        where T : struct, Enum => chance.OneOf(Enum.GetValues<T>());

    public static bool Heads(this Random chance) => chance.Next(2) == 0;

    public static IEnumerable<T> Instead<T>(this IReadOnlyList<T> all, T old, T fresh)
        where T : class => all.Select(one => ReferenceEquals(one, old) ? fresh : one);

    public static IReadOnlyList<T> Without<T>(this IReadOnlyList<T> all, int index) => [.. all.Where((_, i) => i != index)];

    public static IReadOnlyList<T> Shuffled<T>(this Random chance, IReadOnlyList<T> all)
    {
        var copy = all.ToArray();
        chance.Shuffle(copy);
        return copy;
    }
}
