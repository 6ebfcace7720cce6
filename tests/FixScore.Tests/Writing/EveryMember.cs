using System.Text.Json;

namespace FixScore.Tests.Writing;

/// <summary>A record with every member of the format, and the names of members.</summary>
static class EveryMember
{
    public const string Text = """
        {
          "format": "fixscore-record/1",
          "id": "every-member",
          "device": {
            "maker": "Example Works", "model": "Slate One", "modelCode": "S1-EU", "kind": "smartphone", "foldable": true, "released": "2025-03-01",
            "ingressProtection": "IP68", "price": { "amount": { "min": 399, "max": 449.5 }, "currency": "EUR", "taxIncluded": true }
          },
          "assessment": {
            "assessor": "bench", "date": "2026-01-15",
            "units": [
              { "id": "u1", "modelCode": "S1-EU", "software": "1.0", "source": "device", "note": "first", "evidence": ["film"] },
              { "id": "u2", "modelCode": "S1-EU", "source": ["device", "used-spare"] }
            ]
          },
          "parts": [
            { "id": "board", "role": "mainboard" },
            {
              "id": "cell", "role": "battery", "name": "Battery", "on": "tray", "inert": true, "reach": "not-possible",
              "perUnit": [{ "unit": "u1", "marking": "B-1", "modelCode": "B", "note": "n", "evidence": ["film"] }],
              "specs": [{ "name": "rated-capacity", "value": { "min": 4900 }, "unit": "mAh", "note": "n", "evidence": ["film"] }],
              "serialised": { "notify": "local", "authorise": ["none", "remote"], "accessDays": 3, "audience": "repairers" },
              "hazards": ["lithium-cell"], "note": "n", "evidence": ["film"]
            },
            { "id": "tray", "role": "frame", "inert": false, "hazards": [] }
          ],
          "absent": ["hinge"],
          "joints": [
            {
              "id": "j-screw", "joins": ["board", "tray"], "kind": "screw", "count": { "min": 2, "max": 4 }, "reuse": "reusable", "under": ["cell"],
              "where": "corners", "hidden": true, "screw": { "drive": ["PH00", "PH000"], "diameterMm": 1.4, "lengthMm": { "max": 3 } }, "note": "n", "evidence": ["film"]
            },
            {
              "id": "j-glue", "joins": ["cell", "tray"], "kind": "adhesive", "reuse": ["removable", "neither"],
              "adhesive": { "type": "foam", "peelNPer25Mm": 12, "shearMPa": 0.3, "widthMm": 2, "areaMm2": 640, "softensAtC": -5 }
            },
            { "id": "j-plug", "joins": ["cell", "board"], "kind": "connector", "integral": true, "connector": { "type": "board-to-board" } }
          ],
          "tools": [{ "id": "iron", "name": "Heated pad", "class": ["commercial", "specialised"], "suppliedWith": ["product", "cell"], "heatC": 80, "solvent": "isopropanol", "note": "n", "evidence": ["film"] }],
          "consumables": [{ "id": "tape", "name": "Tape", "kind": "sheet", "price": { "amount": 2, "currency": "EUR" }, "note": "n", "evidence": ["film"] }],
          "operations": [
            { "id": "warm", "action": "heat", "tools": ["iron"], "orTools": [[], ["iron"]] },
            {
              "id": "lift", "action": "pry", "tools": [], "after": ["ready", { "anyOf": [{ "undone": "j-screw" }, { "away": "board" }, { "removed": "board" }] }, { "allOf": [] }],
              "directlyAfter": "warm", "undoes": ["j-glue"], "moves": ["board"], "holdsBy": ["j-screw"], "removes": ["cell"], "damages": ["j-glue"],
              "seconds": { "min": 60, "max": 90 }, "waitSeconds": 10, "reassemblySeconds": 120, "consumes": ["tape"], "caution": "Do not bend the cell.",
              "hazards": ["lithium-cell"], "environment": "workshop", "skill": "generalist",
              "footage": [{ "evidence": "film", "unit": "u1", "from": "0:01:00", "to": "1:02:03", "note": "n" }],
              "outcomes": [{ "unit": "u1", "result": "damaged", "damages": ["cell"], "note": "n", "evidence": ["film"] }], "note": "n", "evidence": ["film"]
            },
            { "id": "press", "action": "other", "phase": "reassembly" }
          ],
          "milestones": [{ "id": "ready", "when": ["warm"], "note": "n", "evidence": ["film"] }],
          "sequences": [{ "id": "way", "part": "cell", "by": "maker", "unit": "u1", "operations": ["warm", "lift"], "note": "n", "evidence": ["film"] }],
          "swaps": [
            {
              "id": "trial", "host": "u1", "installed": { "cell": "u2" }, "lockState": "locked", "software": "1.0", "procedure": "none",
              "checks": [{ "function": "charging", "result": "works", "implicates": ["cell"], "note": "n", "evidence": ["film"] }], "note": "n", "evidence": ["film"]
            }
          ],
          "locks": [
            {
              "id": "unlock", "unit": "u1", "from": "locked", "to": "unlocked", "outcome": "done", "waitDays": 7, "wipesData": true, "warrantyNotice": false,
              "losses": [{ "function": "payment", "recovers": "never", "note": "n", "evidence": ["film"] }], "note": "n", "evidence": ["film"]
            }
          ],
          "documentation": [{ "subject": "disassembly-instructions", "audience": "public", "cost": "free", "years": 7, "parts": ["cell"], "note": "n", "evidence": ["film"] }],
          "spares": [
            {
              "part": "cell", "audience": "public", "years": 7, "deliveryDays": 5, "price": { "amount": 30, "currency": "EUR", "taxIncluded": false },
              "onlyBundledWith": ["tray"], "fastenersIncluded": ["j-glue"], "note": "n", "evidence": ["film"]
            },
            { "part": "board", "fastenersIncluded": true },
            { "part": "tray", "fastenersIncluded": false }
          ],
          "support": { "securityUpdateYears": 5, "correctiveUpdateYears": 4, "functionalityUpdateYears": 3, "countedFrom": "end-of-placement" },
          "observations": [
            { "name": "acme.force", "value": -3.5, "unit": "N", "parts": ["cell"], "note": "n", "evidence": ["film"] },
            { "name": "acme.flag", "value": false },
            { "name": "acme.word", "value": "some-word" }
          ],
          "findings": [{ "topic": "smell", "text": "It smells of glue.", "about": ["lift", "u1"], "note": "n", "evidence": ["film"] }],
          "evidence": [{ "id": "film", "kind": "video", "ref": "film.mp4", "sha256": "aaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaa", "retrieved": "2026-01-16", "note": "n", "evidence": ["film"] }]
        }
        """;

    public static IEnumerable<string> NamesIn(JsonElement value) => value.ValueKind switch
    {
        JsonValueKind.Object => value.EnumerateObject().SelectMany(member => NamesIn(member.Value).Prepend(member.Name)),
        JsonValueKind.Array => value.EnumerateArray().SelectMany(NamesIn),
        _ => [],
    };

    public static IEnumerable<string> NamesOfSchema(JsonElement schema) => schema.ValueKind switch
    {
        JsonValueKind.Object => schema.EnumerateObject().SelectMany(member => member.Name == "properties"
            ? member.Value.EnumerateObject().SelectMany(property => NamesOfSchema(property.Value).Prepend(property.Name))
            : NamesOfSchema(member.Value)),
        JsonValueKind.Array => schema.EnumerateArray().SelectMany(NamesOfSchema),
        _ => [],
    };
}
