using CoachOffice.Web.Features.Problem;
using Microsoft.AspNetCore.Diagnostics;
using Microsoft.AspNetCore.Http;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.Web.Tests.Regressions;

/// <summary>A full disk was told as "something failed on our side", which a person can do nothing about.</summary>
public sealed class FullDiskTests
{
    [Theory]
    [InlineData(13, "The disk is full")]
    [InlineData(1, "Something failed on our side")]
    public void A_full_disk_is_called_a_full_disk(int sqliteCode, string title)
    {
        var context = new DefaultHttpContext();
        context.Features.Set<IExceptionHandlerFeature>(new ExceptionHandlerFeature { Error = new DbUpdateException("not saved", new SqliteException("no room", sqliteCode)) });

        Assert.Equal(title, Problems.Of(context, StatusCodes.Status500InternalServerError).Title);
    }
}
