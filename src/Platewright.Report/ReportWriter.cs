using System.Text;
using Platewright.Study.Documents;

namespace Platewright.Report;

/// <summary>Writes report.html so that a reader sees the old one or the new one, never half of one.</summary>
public static class ReportWriter
{
    private static readonly UTF8Encoding Utf8WithoutMark = new(encoderShouldEmitUTF8Identifier: false);

    /// <summary>Writes the page of <paramref name="study"/> to <paramref name="path"/>, replacing what is there.</summary>
    /// <exception cref="IOException">The folder is missing or the file cannot be written; nothing is left behind.</exception>
    public static void Write(StudyDocument study, string path)
    {
        string page = ReportPage.Render(study);
        string aside = $"{path}.{Guid.NewGuid():N}.part";
        try
        {
            File.WriteAllText(aside, page, Utf8WithoutMark);
            File.Move(aside, path, overwrite: true);
        }
        catch
        {
            File.Delete(aside);
            throw;
        }
    }
}
