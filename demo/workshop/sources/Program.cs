using Platewright.Demo;

// Writes the workshop's models anew: into the folder named first, else into demo/workshop/models.
string folder = args.Length > 0 ? args[0] : Path.Combine("demo", "workshop", "models");
foreach ((string path, byte[] content) in Catalogue.Files())
{
    string target = Path.Combine(folder, path);
    Directory.CreateDirectory(Path.GetDirectoryName(target)!);
    File.WriteAllBytes(target, content);
    Console.WriteLine($"{content.Length,9:N0} bytes  {path}");
}
