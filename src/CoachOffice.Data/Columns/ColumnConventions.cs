using CoachOffice.Domain.Students;
using Microsoft.EntityFrameworkCore;
using NodaTime;
using Vogen;

namespace CoachOffice.Data.Columns;

/// <summary>How the domain's own types become columns, told once for every table.</summary>
internal static class ColumnConventions
{
    public static void Apply(ModelConfigurationBuilder conventions)
    {
        conventions.Properties<Instant>().HaveConversion<Instants>();
        conventions.Properties<LocalDate>().HaveConversion<LocalDates>();
        conventions.Properties<LocalTime>().HaveConversion<LocalTimesOfDay>();
        conventions.Properties<LocalDateTime>().HaveConversion<LocalDateTimes>().HaveMaxLength(19);
        foreach (var type in typeof(StudentId).Assembly.GetExportedTypes().Where(t => t.IsValueType))
        {
            if (type.IsEnum) conventions.Properties(type).HaveConversion(typeof(EnumWords<>).MakeGenericType(type)).HaveMaxLength(40);
            else if (ValueTypeOf(type) is { } value) conventions.Properties(type).HaveConversion(typeof(Ids<,>).MakeGenericType(type, value));
        }
    }

    private static Type? ValueTypeOf(Type type) =>
        type.GetInterfaces().FirstOrDefault(i => i.IsGenericType && i.GetGenericTypeDefinition() == typeof(IVogen<,>))?.GetGenericArguments()[1];
}
