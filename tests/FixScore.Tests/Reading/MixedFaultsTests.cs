namespace FixScore.Tests.Reading;

/// <summary>Faults of form and of meaning are told together, and one fault makes no others.</summary>
public sealed class MixedFaultsTests
{
    [Fact]
    public void A_record_with_faults_of_every_sort_tells_them_all() => Assert.Equal(
        ["wrong-text /device/released", "unknown-member /colour", "unknown-word /joints/0/kind", "id-unknown /joints/0/joins/1", "waits-for-itself /operations/0", "range-reversed /operations/0/seconds", "id-twice /evidence/0/id"],
        Texts.TinyWith("""
            {
              "colour": "red",
              "device": { "maker": "Example Works", "model": "Slate One", "kind": "smartphone", "released": "2026-02-30" },
              "joints": [{ "id": "j", "kind": "glue", "joins": ["cell", "nothing"] }],
              "operations": [{ "id": "o", "action": "lift", "after": ["o"], "seconds": { "min": 2, "max": 1 } }],
              "evidence": [{ "id": "cell", "kind": "photo", "ref": "cell.jpg" }]
            }
            """).Told());

    [Fact]
    public void A_list_of_the_wrong_type_leaves_no_dangling_ids_behind() => Assert.Equal(
        ["wrong-type /parts/0/id"], Texts.TinyWith("""{ "parts": [{ "id": 7, "role": "battery" }] }""").Told());
}
