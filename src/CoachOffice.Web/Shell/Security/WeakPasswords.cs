using CoachOffice.Data.Access;
using Microsoft.AspNetCore.Identity;

namespace CoachOffice.Web.Shell.Security;

/// <summary>Refuses passwords anyone would try first. Length is asked elsewhere; kinds of characters are not asked at all.</summary>
internal sealed class WeakPasswords : IPasswordValidator<Account>
{
    private const int FewestDifferent = 5;
    private static readonly Lazy<HashSet<string>> Common = new(Read);

    public Task<IdentityResult> ValidateAsync(UserManager<Account> manager, Account user, string? password)
    {
        var sentence = Why(user, password ?? "");
        return Task.FromResult(sentence is null ? IdentityResult.Success : IdentityResult.Failed(new IdentityError { Code = "password-weak", Description = sentence }));
    }

    private static string? Why(Account user, string password)
    {
        var plain = password.ToLowerInvariant();
        if (plain.Distinct().Count() < FewestDifferent) return "That password repeats a few characters; take a few unrelated words instead.";
        if (Common.Value.Contains(Core(plain))) return "That password is among the first that are tried; take a few unrelated words instead.";
        var own = user.Email?.Split('@')[0].ToLowerInvariant();
        return own is { Length: >= 4 } && plain.Contains(own, StringComparison.Ordinal) ? "A password may not hold your own mail name; take a few unrelated words instead." : null;
    }

    /// <summary>"Password2024!!" and "passwordpassword" are "password" in disguise.</summary>
    private static string Core(string plain)
    {
        var letters = plain.TrimEnd("0123456789!?.-_#*$@+ ".ToCharArray()).TrimStart("0123456789".ToCharArray());
        var word = letters.Length == 0 ? plain : letters;
        for (var part = 1; part <= word.Length / 2; part++)
            if (word.Length % part == 0 && string.Concat(Enumerable.Repeat(word[..part], word.Length / part)) == word) return word[..part];
        return word;
    }

    private static HashSet<string> Read()
    {
        using var stream = typeof(WeakPasswords).Assembly.GetManifestResourceStream("common-passwords.txt")
            ?? throw new InvalidOperationException("The list of common passwords is missing from the build.");
        using var reader = new StreamReader(stream);
        return [.. reader.ReadToEnd().Split('\n', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries)];
    }
}
