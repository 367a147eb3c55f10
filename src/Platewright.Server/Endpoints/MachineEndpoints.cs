using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;
using Platewright.Formats.Toml;
using Platewright.Machines;
using Platewright.Server.Answers;
using Platewright.Server.Shelf;
using Platewright.Server.Uploads;
using Platewright.Study.Documents;
using Platewright.Study.Interview;

namespace Platewright.Server.Endpoints;

/// <summary>The machines the app knows: bundled ones to look at, the user's own to describe and change.</summary>
internal static class MachineEndpoints
{
    public static void Map(IEndpointRouteBuilder api, LocalAppSettings settings)
    {
        api.MapGet("/machines", (Library library) => Answer.Of(new MachinesDocument(
            [
                .. library.Machines.All().Select(m => new KnownMachineDocument(m.Id, m.Name, Own: true, Summaries.Of(m))),
                .. MachineCatalog.Bundled.Select(m => new KnownMachineDocument(m.Id, m.Name, Own: false, Summaries.Of(m))),
            ])))
            .Named("listMachines", "The user's own machines, then the bundled ones.").Produces<MachinesDocument>();

        api.MapGet("/machines/{machine}", (string machine, Library library) =>
                (library.Machines.TextOf(machine) ?? TextOfBundled(machine)) is { } text ? Answer.Of(Describe(text)) : Unknown(machine))
            .Named("readMachine", "A machine file, as a value and as text.").Produces<SettingsDocument>().Refuses(404);

        api.MapPost("/machines", (NewSettingsDocument wanted, Library library) =>
                Answer.Of(Described(library.Machines.Keep(TextOf(wanted), null), []), StatusCodes.Status201Created))
            .Named("addMachine", "Adds a machine of the user's own.").Produces<NewMachineDocument>(StatusCodes.Status201Created).Refuses(422);

        api.MapPut("/machines/{machine}", (string machine, NewSettingsDocument wanted, Library library) =>
                library.Machines.TextOf(machine) is null ? Unknown(machine) : Answer.Of(Described(library.Machines.Keep(TextOf(wanted), machine), [])))
            .Named("changeMachine", "Changes a machine of the user's own.").Produces<NewMachineDocument>().Refuses(404, 422);

        api.MapDelete("/machines/{machine}", (string machine, Library library) =>
                library.Machines.Delete(machine) ? Results.NoContent() : Unknown(machine))
            .Named("deleteMachine", "Takes away a machine of the user's own; studies that name it will say so.")
            .Produces(StatusCodes.Status204NoContent).Refuses(404);

        api.MapPost("/machines/interview", async (HttpRequest request, Library library, CancellationToken cancel) =>
            {
                using SentForm form = await SentForm.Read(request, settings, cancel);
                FilledMachine filled = new MachineInterview(
                    form["name"] ?? "", form["size"], form["enclosure"], form["watts"], form["bed_minutes"], form["price"], form.File("program"), form.File("job"),
                    form["job_time"]).Fill(cancel);
                return Answer.Of(
                    Described(library.Machines.Keep(MachineInterview.FileOf(filled), null), filled.Notes), StatusCodes.Status201Created);
            })
            .Named("interviewMachine", "Adds a machine from the six things a person knows of it; fields name, size, enclosure, watts, bed_minutes, job with job_time, price, program.")
            .Accepts<IFormFileCollection>("multipart/form-data").Produces<NewMachineDocument>(StatusCodes.Status201Created).Refuses(400, 413, 422);
    }

    public static string TextOf(NewSettingsDocument wanted) => wanted.Text ?? TomlJson.Write(wanted.Settings ?? []);

    public static SettingsDocument Describe(string text)
    {
        try
        {
            return new SettingsDocument(TomlJson.Read(text, "machine.toml"), text, [], []);
        }
        catch (DescriptionException e)
        {
            return new SettingsDocument([], text, [], Refused.FieldsOf(e));
        }
    }

    private static string? TextOfBundled(string id) =>
        MachineCatalog.Bundled.FirstOrDefault(m => m.Id == id) is { } machine ? MachineFileWriter.Write(machine) : null;

    private static NewMachineDocument Described(Machine machine, IReadOnlyList<string> notes) => new(machine.Id, machine.Name, notes);

    private static IResult Unknown(string id) => Refused.Missing($"There is no machine \"{id}\" that could be shown or changed.");
}
