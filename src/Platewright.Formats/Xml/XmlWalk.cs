using System.Runtime.InteropServices;
using System.Text;
using System.Xml;
using Platewright.Formats.Reading;

namespace Platewright.Formats.Xml;

/// <summary>
/// A forward walk over the elements of an XML text that nobody vouches for: no DTD, no entities but the five of XML
/// itself, nothing fetched, no bottomless nesting, and every complaint with its line.
/// </summary>
internal sealed class XmlWalk : IDisposable
{
    /// <summary>Deepest nesting of elements; model files need about ten.</summary>
    private const int GreatestDepth = 256;

    private const int NodesBetweenCancelChecks = 1 << 16;

    private readonly XmlReader _reader;
    private readonly ReadOnlyMemory<byte> _xml;
    private readonly string? _part;
    private readonly ReadRequest _request;
    private int _nodes;

    /// <param name="part">Name of the part of a package; null where the XML is the file itself.</param>
    public XmlWalk(ReadOnlyMemory<byte> xml, string? part, ReadRequest request)
    {
        _xml = xml;
        _part = part;
        _request = request;
        Stream stream = MemoryMarshal.TryGetArray(xml, out ArraySegment<byte> array)
            ? new MemoryStream(array.Array!, array.Offset, array.Count, writable: false)
            : new MemoryStream(xml.ToArray());
        var settings = new XmlReaderSettings
        {
            DtdProcessing = DtdProcessing.Prohibit,
            XmlResolver = null,
            IgnoreComments = true,
            IgnoreProcessingInstructions = true,
            IgnoreWhitespace = true,
            CloseInput = true,
        };
        _reader = XmlReader.Create(stream, settings);
    }

    /// <summary>Local name of the element the walk stands on.</summary>
    public string Name => _reader.LocalName;

    public string Namespace => _reader.NamespaceURI;

    /// <summary>Moves to the root element.</summary>
    public void MoveToRoot()
    {
        while (Read())
        {
            if (_reader.NodeType == XmlNodeType.Element) return;
        }
        throw Refuse("the XML holds no element");
    }

    /// <summary>Steps into the element the walk stands on; hand the result to <see cref="NextChild"/>.</summary>
    public int Enter() => _reader.IsEmptyElement ? int.MinValue : _reader.Depth;

    /// <summary>Moves to the next child element of the entered element; false when there is no more.</summary>
    public bool NextChild(int entered)
    {
        if (entered == int.MinValue) return false;
        while (Read())
        {
            if (_reader.NodeType == XmlNodeType.Element && _reader.Depth == entered + 1) return true;
            if (_reader.NodeType == XmlNodeType.EndElement && _reader.Depth == entered) return false;
        }
        return false;
    }

    /// <summary>The attribute without a namespace; null where it is absent.</summary>
    public string? Attribute(string name) => _reader.GetAttribute(name);

    public string? Attribute(string name, string xmlNamespace) => _reader.GetAttribute(name, xmlNamespace);

    /// <summary>The attribute; refused where it is absent.</summary>
    public string Required(string name) => Attribute(name) ?? throw Refuse($"<{Name}> has no “{name}”");

    /// <summary>
    /// Goes over the attributes without making a string of each name; false after the last, back on the element.
    /// </summary>
    public bool NextAttribute(out string name, out string value)
    {
        if (_reader.MoveToNextAttribute())
        {
            name = _reader.NamespaceURI.Length == 0 ? _reader.LocalName : "";
            value = Value();
            return true;
        }
        _reader.MoveToElement();
        name = value = "";
        return false;
    }

    /// <summary>The namespace a prefix stands for here; null where it is not declared.</summary>
    public string? NamespaceOf(string prefix) => _reader.LookupNamespace(prefix);

    /// <summary>
    /// The text of the element the walk stands on, without surrounding space; its child elements are passed over.
    /// </summary>
    public string Text()
    {
        int entered = Enter();
        if (entered == int.MinValue) return "";
        string? only = null;
        StringBuilder? more = null;
        while (Read())
        {
            if (_reader.NodeType == XmlNodeType.EndElement && _reader.Depth == entered) break;
            if (_reader.NodeType is not (XmlNodeType.Text or XmlNodeType.CDATA) || _reader.Depth != entered + 1)
                continue;
            if (only is null) only = Value();
            else (more ??= new StringBuilder(only)).Append(Value());
        }
        return (more?.ToString() ?? only ?? "").Trim();
    }

    /// <summary>A refusal that names the line and the element.</summary>
    public ModelFileException Refuse(string problem, string remedy = ReadRequest.ExportAgain)
    {
        _reader.MoveToElement();
        string element = _reader.NodeType is XmlNodeType.Element or XmlNodeType.EndElement ? $" <{_reader.Name}>" : "";
        return _request.Refuse($"{Part}line {((IXmlLineInfo)_reader).LineNumber}{element}", problem, remedy);
    }

    /// <summary>Where the walk stands, for complaints that come later.</summary>
    public string Place => $"{Part}line {((IXmlLineInfo)_reader).LineNumber} <{_reader.Name}>";

    public void Dispose() => _reader.Dispose();

    private string Part => _part is null ? "" : $"{_part} ";

    private bool Read()
    {
        try
        {
            if (++_nodes % NodesBetweenCancelChecks == 0) _request.Cancel.ThrowIfCancellationRequested();
            if (!_reader.Read()) return false;
        }
        catch (XmlException e)
        {
            throw Malformed(e);
        }
        if (_reader.Depth > GreatestDepth) throw Refuse($"elements are nested deeper than {GreatestDepth}");
        return true;
    }

    /// <summary>
    /// The parser puts off parts of its work until the value is asked for, and finds faults only then.
    /// </summary>
    private string Value()
    {
        try
        {
            return _reader.Value;
        }
        catch (XmlException e)
        {
            throw Malformed(e);
        }
    }

    private ModelFileException Malformed(XmlException fault)
    {
        // For a document type definition the parser has neither a code nor a line.
        int doctype = _xml.Span.IndexOf("<!DOCTYPE"u8);
        if (doctype < 0 && !fault.Message.Contains("DTD", StringComparison.Ordinal))
            return _request.Refuse($"{Part}line {Math.Max(1, fault.LineNumber)}", "the XML is not well formed");
        int line = doctype < 0 ? 1 : 1 + _xml.Span[..doctype].Count((byte)'\n');
        return _request.Refuse(
            $"{Part}line {line}", "it carries a document type definition, which is refused for safety");
    }
}
