using Microsoft.EntityFrameworkCore.Storage.ValueConversion;
using NodaTime;

namespace CoachOffice.Data.Columns;

/// <summary>A time of day is stored as one.</summary>
internal sealed class LocalTimesOfDay() : ValueConverter<LocalTime, TimeOnly>(time => time.ToTimeOnly(), stored => LocalTime.FromTimeOnly(stored));
