using CoachOffice.Domain;
using Microsoft.AspNetCore.Identity;

namespace CoachOffice.UseCases.Access;

/// <summary>The identity library's errors in our words, each with its field.</summary>
public static class AccountRefusals
{
    /// <summary>One refusal for one error.</summary>
    public static Refusal Of(IdentityError error)
    {
        ArgumentNullException.ThrowIfNull(error);
        return error.Code switch
        {
            "PasswordTooShort" => new("password-short", "A password has at least 15 characters; a few words of your own are easiest.", "Password"),
            "PasswordRequiresUniqueChars" => new("password-plain", "The password repeats too few characters; a few words of your own are easiest.", "Password"),
            PlainPasswords.Code => new("password-plain", error.Description, "Password"),
            "DuplicateUserName" or "DuplicateEmail" => new("account-exists", "There is an account with this mail address already.", "Email"),
            "InvalidUserName" or "InvalidEmail" => new("account-mail", "This mail address cannot be used to sign in; letters, digits and -._@+ can.", "Email"),
            "ConcurrencyFailure" => new("changed-meanwhile", "Someone else changed this account meanwhile; look at it again.", null),
            _ => new("account-refused", error.Description, null),
        };
    }
}
