using System.Globalization;

namespace CoachOffice.Benchmarks.Office;

/// <summary>Invented people, the same at every run: the number says who.</summary>
internal static class SomePeople
{
    private static readonly string[] Given =
    [
        "Ada", "Bruno", "Céline", "Dario", "Edda", "Fergus", "Gwen", "Håkon", "Ines", "Jarek", "Kirsti", "Lorcan", "Maëlle", "Nuno", "Orla", "Piet",
        "Quincy", "Rosalind", "Søren", "Tilda", "Ugo", "Vera", "Wendel", "Xenia", "Yannick", "Zoë", "Anselm", "Björk", "Cosima", "Dunstan", "Elif",
    ];

    private static readonly string[] Before = ["Ash", "Birk", "Cold", "Dun", "Elm", "Fen", "Glen", "Hazel", "Ivel", "Jor", "Kest", "Lang", "Møl", "Nord", "Oak", "Pell", "Quarn", "Råd", "Stan", "Thorn"];

    private static readonly string[] After = ["bury", "combe", "dale", "er", "field", "garth", "hurst", "ing", "ley", "mere", "ness", "over", "pool", "rigg", "stead", "ton", "vik", "wick", "wood"];

    public static string GivenName(long i) => Given[i % Given.Length];

    public static string FamilyName(long i) => Before[i / 7 % Before.Length] + After[i / 3 % After.Length];

    public static string Email(long i) => string.Create(CultureInfo.InvariantCulture, $"student{i}@example.org");

    public static string Phone(long i) => string.Create(CultureInfo.InvariantCulture, $"+44 1632 {i:000000}");
}
