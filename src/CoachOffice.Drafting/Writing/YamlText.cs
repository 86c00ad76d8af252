using System.Text.Json;
using System.Text.Json.Nodes;
using CoachOffice.Domain;
using CoachOffice.Drafting.Reading.Nodes;
using YamlDotNet.Core;
using YamlDotNet.Core.Events;

namespace CoachOffice.Drafting.Writing;

/// <summary>Writes a plain tree as YAML in one canonical layout: names below each other, short lists and small mappings on one line, long sentences folded.</summary>
internal sealed class YamlText
{
    private const int LineLetters = 100;
    private const int InlineLetters = 90;

    /// <summary>Inside brackets, where everything stays on one line.</summary>
    private const int Inline = int.MinValue;

    private readonly Emitter _emitter;

    private YamlText(TextWriter text) =>
        _emitter = new Emitter(text, new EmitterSettings().WithBestIndent(2).WithBestWidth(LineLetters).WithIndentedSequences().WithNewLine("\n"));

    /// <summary>The tree as text, ending with a line end.</summary>
    /// <param name="tree">A mapping.</param>
    /// <param name="blocks">How many levels of mappings and lists are written in block form however short they are.</param>
    public static string Of(JsonObject tree, int blocks)
    {
        using var text = new StringWriter();
        var yaml = new YamlText(text);
        yaml._emitter.Emit(new StreamStart());
        yaml._emitter.Emit(new DocumentStart(null, null, isImplicit: true));
        yaml.Value(tree, blocks);
        yaml._emitter.Emit(new DocumentEnd(isImplicit: true));
        yaml._emitter.Emit(new StreamEnd());
        return text.ToString();
    }

    private void Value(JsonNode? node, int blocks)
    {
        switch (node)
        {
            case JsonObject map: Map(map, blocks); break;
            case JsonArray list: List(list, blocks); break;
            default: Single(node, blocks); break;
        }
    }

    private void Map(JsonObject map, int blocks)
    {
        var block = blocks > 0 || !IsShort(map);
        _emitter.Emit(new MappingStart(AnchorName.Empty, TagName.Empty, isImplicit: true, block ? MappingStyle.Block : MappingStyle.Flow));
        foreach (var (name, value) in map)
        {
            Text(name, ScalarStyle.Any);
            Value(value, block ? blocks - 1 : Inline);
        }

        _emitter.Emit(new MappingEnd());
    }

    private void List(JsonArray list, int blocks)
    {
        var block = list.Count > 0 && blocks > Inline && (blocks > 0 || !IsShort(list) || list.Any(IsSentence));
        _emitter.Emit(new SequenceStart(AnchorName.Empty, TagName.Empty, isImplicit: true, block ? SequenceStyle.Block : SequenceStyle.Flow));
        foreach (var item in list) Value(item, block ? blocks - 1 : Inline);
        _emitter.Emit(new SequenceEnd());
    }

    private void Single(JsonNode? node, int blocks)
    {
        if (node?.GetValueKind() == JsonValueKind.String)
        {
            var text = node.GetValue<string>();
            Text(text, blocks > Inline && CanFold(text) ? ScalarStyle.Folded : ScalarStyle.Any);
        }
        else
        {
            _emitter.Emit(new Scalar(AnchorName.Empty, TagName.Empty, node is null ? "null" : CanonicalText(node), ScalarStyle.Plain, isPlainImplicit: true, isQuotedImplicit: false));
        }
    }

    private void Text(string text, ScalarStyle style)
    {
        if (style == ScalarStyle.Any) style = IsPlain(text) ? ScalarStyle.Plain : ScalarStyle.DoubleQuoted;
        _emitter.Emit(new Scalar(AnchorName.Empty, TagName.Empty, text, style, isPlainImplicit: style == ScalarStyle.Plain, isQuotedImplicit: style != ScalarStyle.Plain));
    }

    // A text that the reader would take for a number, a flag or nothing is quoted, and so is anything but plain words.
    private static bool IsPlain(string text) =>
        YamlTree.Plain(text) == ScalarKind.Text && char.IsAsciiLetter(text[0]) && text[^1] is not (' ' or ':')
        && text.Length < LineLetters && text.All(c => char.IsLetterOrDigit(c) || c is ' ' or '-' or '.' or '^' or '/' or '(' or ')' or ';' or '\'' or '+');

    private static bool CanFold(string text) =>
        text.Length > InlineLetters && text[0] != ' ' && text[^1] != ' ' && !text.Contains("  ", StringComparison.Ordinal) && !text.Any(char.IsControl);

    private static bool IsSentence(JsonNode? node) => node?.GetValueKind() == JsonValueKind.String && node.GetValue<string>().Count(c => c == ' ') > 4;

    private static bool IsShort(JsonNode node) => node.ToJsonString().Length <= InlineLetters;

    private static string CanonicalText(JsonNode node) => System.Text.Encoding.UTF8.GetString(CanonicalJson.Write(node));
}
