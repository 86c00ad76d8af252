namespace CoachOffice.Web.Features.Bookings;

/// <summary>What the pages of bookings need beside the operations.</summary>
internal static class BookingsSetup
{
    public static void AddBookingPages(this IServiceCollection services) => services.AddScoped<BookingVerbs>().AddScoped<BookingEnds>().AddScoped<NewBookingPeople>().AddScoped<NewBookingChoices>().AddScoped<NewBookingDeeds>();
}
