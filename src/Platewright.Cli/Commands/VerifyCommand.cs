using System.CommandLine;
using System.Globalization;
using Platewright.Cli.Display;
using Platewright.Formats.Toml;
using Platewright.Study.Documents;
using Platewright.Verify;

namespace Platewright.Cli.Commands;

/// <summary><c>platewright verify FILE</c>: a second opinion on written proofs, by code that shares nothing with the first.</summary>
internal static class VerifyCommand
{
    public static Command Create(Screen screen)
    {
        Argument<string> path = new("FILE") { Description = "A file of proofs, from platewright fit --proof." };
        path.Validators.Add(Options.RefuseOptions);
        Option<bool> json = Options.Json();
        Command command = new("verify", "Check written proofs of fit in interval arithmetic, with code that shares nothing with the solver.")
        {
            path, json,
        };
        command.SetAction(parsed =>
        {
            IReadOnlyList<ProofResult> results = Check(parsed.GetRequiredValue(path));
            if (parsed.GetValue(json)) JsonOutput.Write(screen, Describe(results));
            else Show(results, screen);
            return ExitCode.For(results.Count(r => r.Refused is not null));
        });
        return command;
    }

    private static IReadOnlyList<ProofResult> Check(string path)
    {
        string shown = path.Replace('\\', '/');
        if (!File.Exists(path)) throw new DescriptionException(new DescriptionError("there is no such file.", shown));
        try
        {
            using FileStream stream = File.OpenRead(path);
            return ProofChecker.Check(stream);
        }
        catch (ProofException e)
        {
            throw new DescriptionException(new DescriptionError($"{e.Message}; write it again with platewright fit --proof.", shown));
        }
    }

    private static VerifyDocument Describe(IReadOnlyList<ProofResult> results) => new(
    [
        .. results.Select(r => new VerifiedProofDocument(
            r.File, r.Part, r.Machine, r.Refused is null, r.Refused, r.LowerScale, r.UpperScale, r.Cells)),
    ]);

    private static void Show(IReadOnlyList<ProofResult> results, Screen screen)
    {
        TextGrid grid = new(screen.Columns);
        ShortNames names = new([.. results.Select(r => r.File)]);
        foreach (ProofResult r in results)
        {
            grid.Add(
                names.Of(r.File, r.Part), r.Machine,
                r.Refused is null ? new TextGrid.Cell("accepted", "green") : new TextGrid.Cell("refused", "red"),
                r.Refused ?? string.Create(CultureInfo.InvariantCulture,
                    $"largest scale from {100 * r.LowerScale:0.0000} % to {100 * r.UpperScale:0.0000} %, {r.Cells} cells"));
        }
        if (results.Count > 0) grid.Write(screen.Result);
        else screen.Output.WriteLine("The file holds no proof.");
    }
}
