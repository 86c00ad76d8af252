using Microsoft.AspNetCore.Identity;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;

namespace CoachOffice.Data.Access;

/// <summary>The shape of the sign-in tables, the same in the program, in tools and in tests.</summary>
public static class AccountTables
{
    /// <summary>For contexts made without a container: the identity library reads its schema version from one.</summary>
    internal static IServiceProvider Settings { get; } =
        new ServiceCollection().AddOptions().Configure<IdentityOptions>(Settle).BuildServiceProvider();

    /// <summary>Schema with passkeys; keys short enough for an index.</summary>
    public static void Settle(IdentityOptions options)
    {
        ArgumentNullException.ThrowIfNull(options);
        options.Stores.SchemaVersion = IdentitySchemaVersions.Version3;
        options.Stores.MaxLengthForKeys = 128;
    }

    /// <summary>Names in our own words; refuses a context that was made without <see cref="Settle"/>.</summary>
    internal static void Name(ModelBuilder builder)
    {
        if (builder.Model.FindEntityType(typeof(IdentityUserPasskey<Guid>)) is null)
            throw new InvalidOperationException("The context was made without the identity settings; use AddOfficeDb or OfficeDatabase.Options.");
        builder.Entity<IdentityUserClaim<Guid>>().ToTable("AccountClaims");
        builder.Entity<IdentityUserLogin<Guid>>().ToTable("AccountLogins");
        builder.Entity<IdentityUserToken<Guid>>().ToTable("AccountTokens");
        builder.Entity<IdentityUserPasskey<Guid>>().ToTable("AccountPasskeys");
        builder.Entity<IdentityUserRole<Guid>>().ToTable("AccountRoles");
        builder.Entity<IdentityRole<Guid>>().ToTable("Roles");
        builder.Entity<IdentityRoleClaim<Guid>>().ToTable("RoleClaims");
    }
}
