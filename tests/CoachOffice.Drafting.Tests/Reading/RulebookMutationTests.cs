using CoachOffice.Drafting.Reading;
using CsCheck;

namespace CoachOffice.Drafting.Tests.Reading;

/// <summary>Whatever one character does to a file, the answer is a sound book or faults with a place; never an exception.</summary>
public sealed class RulebookMutationTests
{
    private static readonly string Letters = "abz019.-:,[]{}#&*!|>'\"%@`?~^ \t\n\r\\\0\u0085\ud83d\ufeff";

    private static readonly string[] Names = [.. SmallBook.Files.Keys];

    private static readonly Gen<(string File, string Content)> Mutated =
        from file in Gen.Int[0, Names.Length - 1].Select(i => Names[i])
        from index in Gen.Int[0, SmallBook.Files[file].Length - 1]
        from letter in Gen.Int[0, Letters.Length - 1].Select(i => Letters[i])
        from kind in Gen.Int[0, 2]
        select (file, Change(SmallBook.Files[file], index, letter, kind));

    [Fact]
    public void One_changed_character_gives_a_book_or_faults_with_a_place() => Mutated.Sample(
        change =>
        {
            var result = RulebookReader.Load(SmallBook.WithFile(change.File, change.Content));
            Assert.True(result.Succeeded || result.Faults.All(f => f.Line >= 1 && f.Column >= 1 && f.Message.Length > 0 && SmallBook.Files.ContainsKey(f.File)));
        },
        iter: FullProof.IsShort ? 60 : 600);

    [Fact]
    public void A_file_of_garbage_gives_faults_with_a_place() => Gen.Int[0, Letters.Length - 1].Array[0, 60].Sample(
        garbage =>
        {
            var result = RulebookReader.Load(SmallBook.WithFile("more.yaml", string.Concat(garbage.Select(i => Letters[i]))));
            Assert.True(result.Succeeded || result.Faults.All(f => f.Line >= 1 && f.Column >= 1 && !f.ToString().Contains('\n', StringComparison.Ordinal)));
        },
        iter: FullProof.IsShort ? 30 : 300);

    private static string Change(string text, int index, char letter, int kind) => kind switch
    {
        0 => text.Remove(index, 1),
        1 => text.Insert(index, letter.ToString()),
        _ => string.Concat(text.AsSpan(0, index), letter.ToString(), text.AsSpan(index + 1)),
    };
}
