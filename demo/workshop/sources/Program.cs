using Platewright.Demo;

// Writes the models of both demos anew: below the folder named first, else below demo.
string folder = args.Length > 0 ? args[0] : "demo";
Write("workshop", Catalogue.Files());
Write("school", Catalogue.SchoolFiles());

void Write(string demo, IEnumerable<(string Path, byte[] Content)> files)
{
    foreach ((string path, byte[] content) in files)
    {
        string target = Path.Combine(folder, demo, "models", path);
        Directory.CreateDirectory(Path.GetDirectoryName(target)!);
        File.WriteAllBytes(target, content);
        Console.WriteLine($"{content.Length,9:N0} bytes  {demo}/{path}");
    }
}
