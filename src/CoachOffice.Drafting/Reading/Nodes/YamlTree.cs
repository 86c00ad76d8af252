using System.Buffers;
using System.Text.RegularExpressions;
using YamlDotNet.Core;
using YamlDotNet.Core.Events;

namespace CoachOffice.Drafting.Reading.Nodes;

/// <summary>Reads the plain part of YAML (mappings, lists, values) into positioned nodes. Anchors, aliases, tags and second documents are refused.</summary>
internal sealed partial class YamlTree
{
    private const int Deepest = 32;
    private static readonly SearchValues<char> Forbidden =
        SearchValues.Create([.. Enumerable.Range(0, 0xA0).Select(c => (char)c).Where(c => char.IsControl(c) && c is not ('\t' or '\n' or '\r')), '\uFEFF', '\uFFFE', '\uFFFF']);

    private readonly string _file;
    private readonly FaultList _faults;
    private readonly Parser _parser;

    private YamlTree(string file, string text, FaultList faults)
    {
        _file = file;
        _faults = faults;
        _parser = new Parser(new StringReader(text));
    }

    /// <summary>The file's value, or null with a fault when it is no YAML.</summary>
    public static Node? Read(string file, string text, FaultList faults)
    {
        if (!Printable(file, text, faults)) return null;
        var tree = new YamlTree(file, text, faults);
        try
        {
            return tree.Document();
        }
        catch (YamlException refused)
        {
            var at = new Position(file, Math.Max(1, (int)refused.Start.Line), Math.Max(1, (int)refused.Start.Column));
            faults.Add(at, Fault.WholeFile, $"this is not YAML as read here: {FirstLine(refused.Message)}");
            return null;
        }
        catch (Exception refused) when (refused is InvalidOperationException or ArgumentException)
        {
            // The library gives up this way on some broken texts and tags, without a place; the last thing understood is before it.
            var last = tree._parser.Current?.End ?? Mark.Empty;
            faults.Add(new Position(file, (int)last.Line, (int)last.Column), Fault.WholeFile, "this is not YAML as read here: soon behind this place the text breaks off oddly");
            return null;
        }
    }

    private Node? Document()
    {
        _parser.Consume<StreamStart>();
        if (_parser.Accept<StreamEnd>(out _))
        {
            _faults.Add(new Position(_file, 1, 1), Fault.WholeFile, "the file is empty; write at least one entry or remove the file");
            return null;
        }

        _parser.Consume<DocumentStart>();
        var node = Value(Fault.WholeFile, 0);
        _parser.Consume<DocumentEnd>();
        if (_parser.Accept<DocumentStart>(out var second)) _faults.Add(At(second), Fault.WholeFile, "a second document begins here; write one document a file");
        return node;
    }

    private Node Value(string path, int depth)
    {
        var next = _parser.Current ?? throw new YamlException("the file ends too early");
        if (depth > Deepest) throw new YamlException(next.Start, next.End, $"nested deeper than {Deepest} levels");
        if (next is NodeEvent node) RefuseExtras(node, path);
        return next switch
        {
            MappingStart => Map(path, depth),
            SequenceStart => List(path, depth),
            Scalar scalar => Single(scalar, path),
            _ => Alias(path),
        };
    }

    private MapNode Map(string path, int depth)
    {
        var map = new MapNode(At(_parser.Consume<MappingStart>()), path);
        while (!_parser.TryConsume<MappingEnd>(out _))
        {
            if (_parser.TryConsume<Scalar>(out var name))
            {
                RefuseExtras(name, path);
                map.Add(new MapEntry(name.Value, At(name), Value(Node.Inside(path, Words.Clip(name.Value)), depth + 1)), _faults);
                continue;
            }

            _faults.Add(At(_parser.Current!), path, "a name is expected here, not a list or mapping");
            Value(path, depth + 1);
            Value(path, depth + 1);
        }

        return map;
    }

    private ListNode List(string path, int depth)
    {
        var at = At(_parser.Consume<SequenceStart>());
        var items = new List<Node>();
        while (!_parser.TryConsume<SequenceEnd>(out _)) items.Add(Value(Node.Inside(path, items.Count), depth + 1));
        return new ListNode(at, path, items);
    }

    private ScalarNode Single(Scalar scalar, string path)
    {
        _parser.MoveNext();
        if (!Words.IsWhole(scalar.Value)) _faults.Add(At(scalar), path, "this text holds half a character (a lone surrogate); write the whole character");
        var kind = scalar.Style == ScalarStyle.Plain ? Plain(scalar.Value) : ScalarKind.Text;
        var lead = scalar.Style is ScalarStyle.SingleQuoted or ScalarStyle.DoubleQuoted ? 1 : 0;
        return new ScalarNode(At(scalar), path, kind, scalar.Value) { Lead = lead };
    }

    private ScalarNode Alias(string path)
    {
        var at = At(_parser.Current!);
        if (!_parser.TryConsume<AnchorAlias>(out _)) throw new YamlException("the file ends too early");
        _faults.Add(at, path, "an alias (*name) is not read here; write the value out");
        return new ScalarNode(at, path, ScalarKind.Nothing, "");
    }

    private void RefuseExtras(NodeEvent node, string path)
    {
        if (!node.Anchor.IsEmpty) _faults.Add(At(node), path, "an anchor (&name) is not read here; write the value out where it is used");
        if (!node.Tag.IsEmpty) _faults.Add(At(node), path, "a tag (!name) is not read here; leave it out");
    }

    /// <summary>What an unquoted value is taken for.</summary>
    public static ScalarKind Plain(string text) => text switch
    {
        "" or "null" or "~" => ScalarKind.Nothing,
        "true" or "false" => ScalarKind.Flag,
        _ => Number().IsMatch(text) ? ScalarKind.Number : ScalarKind.Text,
    };

    private Position At(ParsingEvent seen) => new(_file, (int)seen.Start.Line, (int)seen.Start.Column);

    // YAML allows no other control characters, and the scanner below stumbles over some of them instead of refusing.
    private static bool Printable(string file, string text, FaultList faults)
    {
        var index = text.AsSpan().IndexOfAny(Forbidden);
        if (index < 0) return true;
        var before = text.AsSpan(0, index);
        var at = new Position(file, before.Count('\n') + 1, index - before.LastIndexOf('\n'));
        faults.Add(at, Fault.WholeFile, $"the control character U+{(int)text[index]:X4} is not read here; take it out");
        return false;
    }

    private static string FirstLine(string message) => message.ReplaceLineEndings("\n").Split('\n')[0].TrimEnd('.');

    [GeneratedRegex(@"^[-+]?([0-9]+\.?[0-9]*|\.[0-9]+)([eE][-+]?[0-9]+)?$", RegexOptions.ExplicitCapture | RegexOptions.NonBacktracking)]
    private static partial Regex Number();
}
