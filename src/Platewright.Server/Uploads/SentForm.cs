using Microsoft.AspNetCore.Http;
using Platewright.Formats.Toml;
using Platewright.Server.Shelf;

namespace Platewright.Server.Uploads;

/// <summary>A form with a few files, put where readers can open them and removed after.</summary>
internal sealed class SentForm : IDisposable
{
    private readonly IFormCollection _form;
    private readonly string _folder;
    private readonly Dictionary<string, string> _files = new(StringComparer.Ordinal);

    private SentForm(IFormCollection form, string folder) => (_form, _folder) = (form, folder);

    /// <summary>What a field says; null where it is blank.</summary>
    public string? this[string field] => _form[field].ToString().Trim() is { Length: > 0 } text ? text : null;

    /// <exception cref="DescriptionException">A file's name cannot be used.</exception>
    public static async Task<SentForm> Read(HttpRequest request, LocalAppSettings settings, CancellationToken cancel)
    {
        if (!request.HasFormContentType) throw new BadHttpRequestException("expected multipart/form-data");
        IFormCollection sent = await request.ReadFormAsync(cancel);
        SentForm form = new(sent, Path.Combine(settings.Store, "incoming", Guid.NewGuid().ToString("N")));
        try
        {
            foreach (IFormFile file in sent.Files.Where(f => f.Length > 0))
            {
                if (!InsidePath.TryClean(file.FileName, out string? path, out string? wrong))
                    throw new DescriptionException(new DescriptionError($"{wrong}.", file.FileName, Key: file.Name));
                string full = InsidePath.Combine(form._folder, $"{file.Name}/{path}");
                Directory.CreateDirectory(Path.GetDirectoryName(full)!);
                await using FileStream kept = System.IO.File.Create(full);
                await file.CopyToAsync(kept, cancel);
                form._files[file.Name] = full;
            }
            return form;
        }
        catch
        {
            form.Dispose();
            throw;
        }
    }

    /// <summary>Where the file of a field lies; null where none was sent.</summary>
    public string? File(string field) => _files.GetValueOrDefault(field);

    public void Dispose()
    {
        if (Directory.Exists(_folder)) Directory.Delete(_folder, recursive: true);
    }
}
