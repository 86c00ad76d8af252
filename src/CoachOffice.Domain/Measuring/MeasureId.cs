using Vogen;

namespace CoachOffice.Domain.Measuring;

/// <summary>Id of a measure in the rulebook, e.g. <c>impact-spine-tilt</c>.</summary>
[ValueObject<string>]
public readonly partial struct MeasureId
{
    private static Validation Validate(string input) =>
        string.IsNullOrWhiteSpace(input) ? Validation.Invalid("A measure id is not empty.") : Validation.Ok;
}
