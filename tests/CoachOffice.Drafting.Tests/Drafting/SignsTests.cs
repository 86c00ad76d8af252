using CoachOffice.Domain.Measuring;
using CoachOffice.Drafting.Words;

namespace CoachOffice.Drafting.Tests.Drafting;

/// <summary>Face to path is positive when open and the face at the top when closed: only words keep them apart.</summary>
public sealed class SignsTests
{
    [Theory]
    [InlineData("face-to-path", -6, "6 deg closed")]
    [InlineData("face-to-path", 6, "6 deg open")]
    [InlineData("top-face", -6, "6 deg open")]
    [InlineData("lag-angle", 124, "124 deg")]
    [InlineData("club-path", 0, "0 deg")]
    public void A_value_is_said_with_its_way(string measure, double value, string said) => Assert.Equal(said, Signs.Value(Of(measure), value));

    [Theory]
    [InlineData("face-to-path", -3.0, 3.0, "wanted 3 closed to 3 open")]
    [InlineData("impact-spine-tilt", 20.0, 28.0, "wanted 20 to 28 away from the target")]
    [InlineData("max-pelvis-away", -7.0, 0.0, "wanted 7 to 0 away from the target")]
    [InlineData("pelvis-toward-ball", null, 3.0, "wanted 3 or less")]
    [InlineData("carry", null, null, null)]
    public void So_is_what_is_wanted(string measure, double? low, double? high, string? said) => Assert.Equal(said, Signs.Wanted(Of(measure), new Limits(low, high)));

    [Theory]
    [InlineData("top-spine-tilt", -3.6, true, "at most 3.6 deg toward the target")]
    [InlineData("top-spine-tilt", 3.6, true, "at least 3.6 deg away from the target")]
    [InlineData("face-to-path", -2, false, "at least 2 deg closed")]
    [InlineData("lag-angle", 110, false, "at most 110 deg")]
    public void A_bound_is_turned_with_its_word(string measure, double target, bool isFloor, string said) => Assert.Equal(said, Signs.Bound(Of(measure), target, isFloor));

    [Theory]
    [InlineData("Shaft lean", "shaft lean")]
    [InlineData("X", "x")]
    [InlineData("UV light", "UV light")]
    public void A_name_inside_a_sentence_begins_small_unless_it_is_an_abbreviation(string name, string inside) => Assert.Equal(inside, Sentences.LowerFirst(name));

    [Theory]
    [InlineData("", "")]
    [InlineData("x", "X")]
    [InlineData("the head", "The head")]
    public void A_sentence_begins_large(string text, string begun) => Assert.Equal(begun, Sentences.UpperFirst(text));

    private static Measure Of(string id) => HouseBook.Book.Find(MeasureId.From(id))!;
}
