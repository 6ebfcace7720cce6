using System.Text.Json;
using FixScore.Records;

namespace FixScore.Writing;

static class PartWriter
{
    public static void Part(Utf8JsonWriter json, Part part)
    {
        json.Required("id", part.Id);
        json.Required("role", part.Role);
        json.Text("name", part.Name);
        json.Text("on", part.On);
        json.Flag("inert", part.Inert == Roles.IsInert(part.Role) ? null : part.Inert);
        json.OneOf("reach", part.Reach.Is(Reach.NotTried) ? default : part.Reach);
        json.Entries("perUnit", part.PerUnit, Marking);
        json.Entries("specs", part.Specs, Spec);
        json.Object("serialised", part.Serialised, Serialisation);
        json.Words("hazards", part.Hazards);
        json.Remarks(part);
    }

    static void Marking(Utf8JsonWriter json, PartMarking marking)
    {
        json.Required("unit", marking.Unit);
        json.Text("marking", marking.Marking);
        json.Text("modelCode", marking.ModelCode);
        json.Remarks(marking);
    }

    static void Spec(Utf8JsonWriter json, Spec spec)
    {
        json.Required("name", spec.Name);
        json.Quantity("value", spec.Value);
        json.Required("unit", spec.Unit);
        json.Remarks(spec);
    }

    static void Serialisation(Utf8JsonWriter json, Serialisation serialised)
    {
        json.AnyOf("notify", serialised.Notify);
        json.AnyOf("authorise", serialised.Authorise);
        json.Quantity("accessDays", serialised.AccessDays);
        json.OneOf("audience", serialised.Audience);
    }
}
