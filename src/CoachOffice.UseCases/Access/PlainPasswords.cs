using CoachOffice.Data.Access;
using CoachOffice.Domain.Students;
using Microsoft.AspNetCore.Identity;

namespace CoachOffice.UseCases.Access;

/// <summary>Refuses passwords that a stranger would try first: common words and rows of keys, the person's own name and address. What is left without them must still be a few characters long.</summary>
public sealed class PlainPasswords : IPasswordValidator<Account>
{
    internal const string Code = "PasswordPlain";

    private const int LeastLeft = 6;

    // From memory: words and rows of keys that every list of common passwords begins with, and words of this trade.
    private static readonly string[] Common =
    [
        "password", "passwort", "passw0rd", "letmein", "welcome", "qwertyuiop", "qwerty", "asdfghjkl", "asdf", "zxcvbnm", "1234567890", "0123456789", "0987654321",
        "123456", "12345", "1234", "abcdefgh", "abcdef", "abcd", "iloveyou", "monkey", "dragon", "football", "baseball", "sunshine", "princess", "superman", "batman",
        "admin", "administrator", "changeme", "secret", "default", "login", "master", "trustno1", "coachoffice", "coach", "office", "golf", "golfing", "swing", "birdie",
    ];

    /// <inheritdoc/>
    public Task<IdentityResult> ValidateAsync(UserManager<Account> manager, Account user, string? password)
    {
        ArgumentNullException.ThrowIfNull(user);
        var left = StudentSearch.Fold(password ?? "");
        var own = StudentSearch.Fold($"{user.DisplayName} {user.Email?.Replace('@', ' ').Replace('.', ' ')}").Split(' ').Where(word => word.Length > 2);
        foreach (var word in own.Concat(Common).OrderByDescending(w => w.Length)) left = left.Replace(word, "", StringComparison.Ordinal);
        var enough = left.Where(char.IsLetter).Distinct().Count() + left.Where(c => !char.IsLetter(c)).Distinct().Count() >= LeastLeft;
        return Task.FromResult(enough ? IdentityResult.Success : IdentityResult.Failed(new IdentityError
        {
            Code = Code,
            Description = "This password is made of words others would try first; take a few words that have nothing to do with you or this program.",
        }));
    }
}
