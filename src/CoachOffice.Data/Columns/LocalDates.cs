using Microsoft.EntityFrameworkCore.Storage.ValueConversion;
using NodaTime;

namespace CoachOffice.Data.Columns;

/// <summary>A day without a zone is stored as a date.</summary>
internal sealed class LocalDates() : ValueConverter<LocalDate, DateOnly>(day => day.ToDateOnly(), stored => LocalDate.FromDateOnly(stored));
