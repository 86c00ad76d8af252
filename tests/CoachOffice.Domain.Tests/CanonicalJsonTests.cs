using System.Globalization;
using System.Text;
using System.Text.Json.Nodes;
using CoachOffice.Domain;

namespace CoachOffice.Domain.Tests;

public sealed class CanonicalJsonTests
{
    // Source: RFC 8785 (JSON Canonicalization Scheme, 2020), appendix B, table of IEEE 754 samples.
    [Theory]
    [InlineData("0000000000000000", "0")]
    [InlineData("8000000000000000", "0")]
    [InlineData("0000000000000001", "5e-324")]
    [InlineData("8000000000000001", "-5e-324")]
    [InlineData("7fefffffffffffff", "1.7976931348623157e+308")]
    [InlineData("ffefffffffffffff", "-1.7976931348623157e+308")]
    [InlineData("4340000000000000", "9007199254740992")]
    [InlineData("c340000000000000", "-9007199254740992")]
    [InlineData("4430000000000000", "295147905179352830000")]
    [InlineData("44b52d02c7e14af5", "9.999999999999997e+22")]
    [InlineData("44b52d02c7e14af6", "1e+23")]
    [InlineData("44b52d02c7e14af7", "1.0000000000000001e+23")]
    [InlineData("444b1ae4d6e2ef4e", "999999999999999700000")]
    [InlineData("444b1ae4d6e2ef4f", "999999999999999900000")]
    [InlineData("444b1ae4d6e2ef50", "1e+21")]
    [InlineData("3eb0c6f7a0b5ed8c", "9.999999999999997e-7")]
    [InlineData("3eb0c6f7a0b5ed8d", "0.000001")]
    [InlineData("41b3de4355555553", "333333333.3333332")]
    [InlineData("41b3de4355555554", "333333333.33333325")]
    [InlineData("41b3de4355555555", "333333333.3333333")]
    [InlineData("41b3de4355555556", "333333333.3333334")]
    [InlineData("41b3de4355555557", "333333333.33333343")]
    [InlineData("becbf647612f3696", "-0.0000033333333333333333")]
    [InlineData("43143ff3c1cb0959", "1424953923781206.2")]
    public void Numbers_are_written_as_the_standard_shows(string bits, string expected)
    {
        var number = BitConverter.UInt64BitsToDouble(ulong.Parse(bits, NumberStyles.HexNumber, CultureInfo.InvariantCulture));

        Assert.Equal(expected, Written(number));
    }

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public void What_JSON_has_no_number_for_throws(double number) => Assert.Throws<ArgumentException>(() => Written(number));

    // Source: RFC 8785, section 3.2.3: the order of the names of its sample is by UTF-16 code units.
    [Fact]
    public void Names_are_sorted_by_UTF16_code_units()
    {
        var map = new JsonObject { ["\u20ac"] = 5, ["\r"] = 1, ["\ufb33"] = 7, ["1"] = 2, ["\ud83d\ude00"] = 6, ["\u0080"] = 3, ["\u00f6"] = 4 };

        Assert.Equal("{\"\\r\":1,\"1\":2,\"\u0080\":3,\"\u00f6\":4,\"\u20ac\":5,\"\ud83d\ude00\":6,\"\ufb33\":7}", Encoding.UTF8.GetString(CanonicalJson.Write(map)));
    }

    // Source: RFC 8785, section 3.2.2, its sample of literals, numbers and a text with escapes.
    [Fact]
    public void The_sample_of_the_standard_comes_out_as_printed_there()
    {
        var node = JsonNode.Parse("""
            {
              "numbers": [333333333.33333329, 1E30, 4.50, 2e-3, 0.000000000000000000000000001],
              "string": "\u20ac$\u000F\u000aA'\u0042\u0022\u005c\\\"\/",
              "literals": [null, true, false]
            }
            """);

        Assert.Equal(
            """{"literals":[null,true,false],"numbers":[333333333.3333333,1e+30,4.5,0.002,1e-27],"string":"€$\u000f\nA'B\"\\\\\"/"}""",
            Encoding.UTF8.GetString(CanonicalJson.Write(node)));
    }

    // Source: RFC 8785, section 3.2.2.2: two-character escapes where JSON has them, other control characters as lower-case \u00xx, all else as itself.
    [Fact]
    public void Texts_are_escaped_as_little_as_may_be() =>
        Assert.Equal("\"\\b\\t\\n\\f\\r\\u0000\\u001f \\\"\\\\/\u007f\u00e9\"", Encoding.UTF8.GetString(CanonicalJson.Write(JsonValue.Create("\b\t\n\f\r\0\u001f \"\\/\u007f\u00e9"))));

    [Fact]
    public void Half_a_character_is_no_text() => Assert.Throws<EncoderFallbackException>(() => CanonicalJson.Write(JsonValue.Create("a" + (char)0xD83D)));

    [Fact]
    public void There_is_no_mark_in_front_and_nothing_is_null()
    {
        Assert.Equal("null"u8.ToArray(), CanonicalJson.Write(null));
        Assert.Equal("[]"u8.ToArray(), CanonicalJson.Write(new JsonArray()));
    }

    [Theory]
    [InlineData("3")]
    [InlineData("-3")]
    public void A_whole_number_is_written_alike_whatever_it_was_made_from(string written)
    {
        var number = int.Parse(written, CultureInfo.InvariantCulture);
        Assert.All([JsonValue.Create(number), JsonValue.Create((double)number), JsonValue.Create((decimal)number), JsonNode.Parse(written)!], node => Assert.Equal(written, Encoding.UTF8.GetString(CanonicalJson.Write(node))));
    }

    // Source of the value: SHA-256 of the two bytes "{}", reproducible with any SHA-256 program.
    [Fact]
    public void The_hash_is_lower_case_hexadecimal() =>
        Assert.Equal("44136fa355b3678a1146ad16f7e8649e94fb4fc21fe77e8310c060f61caaff8a", CanonicalJson.Sha256(new JsonObject()));

    private static string Written(double number) => Encoding.UTF8.GetString(CanonicalJson.Write(JsonValue.Create(number)));
}
