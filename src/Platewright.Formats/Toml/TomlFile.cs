using System.Text;
using Tomlyn;
using Tomlyn.Parsing;
using Tomlyn.Syntax;

namespace Platewright.Formats.Toml;

/// <summary>
/// Reads a TOML file into records: parse, let the caller read the tables it knows, then refuse everything it did not
/// ask for. It works on the syntax tree, because every value needs its place.
/// </summary>
public static class TomlFile
{
    /// <summary>
    /// Longest file accepted, bytes: a description of machines or of a study is a page, not a data set.
    /// </summary>
    public const int LongestFile = 4 << 20;

    private const int MostSyntaxErrors = 5;

    /// <summary>Reads a file. <paramref name="read"/> may return null only after noting an error.</summary>
    /// <exception cref="DescriptionException">The file cannot be opened, is not TOML, or says what is not
    /// expected.</exception>
    public static T Read<T>(string path, Func<TomlTable, T?> read)
        where T : class => Parse(TextOf(path), path.Replace('\\', '/'), read);

    /// <summary>Reads TOML text; <paramref name="file"/> is how errors name it.</summary>
    /// <exception cref="DescriptionException">It is not TOML, or says what is not expected.</exception>
    public static T Parse<T>(string text, string file, Func<TomlTable, T?> read)
        where T : class
    {
        List<DescriptionError> errors = [];
        DocumentSyntax document = Syntax(text, file);
        TomlTable root = new TomlTreeBuilder(file, errors).Build(document);
        T? value = read(root);
        root.RefuseUnknown();
        if (errors.Count > 0) throw new DescriptionException(errors.OrderBy(e => e.Line));
        return value
            ?? throw new InvalidOperationException("Bug in Platewright: a reader gave nothing and noted no error.");
    }

    /// <summary>The tree of a TOML text with whatever keys it has.</summary>
    /// <exception cref="DescriptionException">It is not TOML, or sets a key twice.</exception>
    internal static TomlTable Tree(string text, string file)
    {
        List<DescriptionError> errors = [];
        TomlTable root = new TomlTreeBuilder(file, errors).Build(Syntax(text, file));
        return errors.Count == 0 ? root : throw new DescriptionException(errors.OrderBy(e => e.Line));
    }

    private static DocumentSyntax Syntax(string text, string file)
    {
        DocumentSyntax document;
        try
        {
            document = SyntaxParser.Parse(text, file, validate: false);
        }
        catch (TomlException e)
        {
            throw new DescriptionException(new DescriptionError($"not readable as TOML: {e.Message}", file));
        }
        if (!document.HasErrors) return document;
        throw new DescriptionException(document.Diagnostics
            .Where(d => d.Kind == DiagnosticMessageKind.Error)
            .Take(MostSyntaxErrors)
            .Select(d => new DescriptionError($"not valid TOML: {d.Message}.", file, d.Span.Start.Line + 1)));
    }

    private static string TextOf(string path)
    {
        string named = path.Replace('\\', '/');
        try
        {
            FileInfo info = new(path);
            if (info.Exists && info.Length > LongestFile)
                throw new DescriptionException(new DescriptionError(
                    $"the file has {info.Length} bytes; at most {LongestFile} are read.", named));
            UTF8Encoding strict = new(false, throwOnInvalidBytes: true);
            return strict.GetString(File.ReadAllBytes(path)).TrimStart('\uFEFF');
        }
        catch (DecoderFallbackException e)
        {
            string message = $"not UTF-8 text: byte {e.Index} fits no character.";
            throw new DescriptionException(new DescriptionError(message, named));
        }
        catch (Exception e) when (e is FileNotFoundException or DirectoryNotFoundException)
        {
            throw new DescriptionException(new DescriptionError("there is no such file.", named));
        }
        catch (Exception e) when (
            e is IOException or UnauthorizedAccessException or NotSupportedException or ArgumentException)
        {
            throw new DescriptionException(new DescriptionError($"the file cannot be read: {e.Message}", named));
        }
    }
}
