using System.Collections.Immutable;
using FixScore.Records;

namespace FixScore.Testing;

/// <summary>Where objects of one type stand in a record: finds them, and replaces them.</summary>
/// <typeparam name="T">Type of the objects.</typeparam>
/// <param name="path">Path of the place, such as <c>joints[]</c>; empty for the record itself.</param>
/// <param name="change">The record with each object replaced by what a function makes of it.</param>
sealed class Place<T>(string path, Func<TeardownRecord, Func<Pointer, T, T>, TeardownRecord> change) where T : class
{
    /// <summary>The objects themselves, as members of the list or object that holds them.</summary>
    public Member Itself => new(path, record => [.. Entries(record).Select(each => each.At)]);

    /// <summary>A member that cannot be unknown: it is required, or leaving it out has a stated meaning.</summary>
    public Member Known(string name, Func<T, bool>? has = null) =>
        new(PathTo(name), record => [.. Entries(record).Where(each => has?.Invoke(each.Entry) ?? true).Select(each => At(each.At, name))]);

    /// <summary>A member that can be unknown.</summary>
    /// <param name="name">Its name.</param>
    /// <param name="delete">The object without it; equal to the object that does not have it.</param>
    public Member Open(string name, Func<T, T> delete) =>
        new(PathTo(name), record => Having(record, name, delete), record => [.. Singly(record, name, delete), .. AllAtOnce(record, name, delete)]);

    /// <summary>A member that can be unknown, where leaving out one of several may rightly narrow a score.</summary>
    public Member OpenAllAtOnce(string name, Func<T, T> delete) =>
        new(PathTo(name), record => Having(record, name, delete), record => AllAtOnce(record, name, delete));

    /// <summary>The objects in a list that each of these objects has.</summary>
    public Place<TChild> Each<TChild>(string name, Func<T, EntryList<TChild>> get, Func<T, EntryList<TChild>, T> set) where TChild : class =>
        new($"{PathTo(name)}[]", (record, map) => change(record, (at, entry) =>
            get(entry) is { IsRecorded: true } list
                ? set(entry, [.. list.Select((child, index) => map(At(at, name).Child(index), child))])
                : entry));

    /// <summary>The object that each of these objects may have.</summary>
    public Place<TChild> One<TChild>(string name, Func<T, TChild?> get, Func<T, TChild, T> set) where TChild : class =>
        new(PathTo(name), (record, map) => change(record, (at, entry) =>
            get(entry) is { } child ? set(entry, map(At(at, name), child)) : entry));

    IEnumerable<Deletion> Singly(TeardownRecord record, string name, Func<T, T> delete)
    {
        var having = Having(record, name, delete);
        if (having.Length == 1) return [];
        return having.Select(target => new Deletion(
            target.Text, change(record, (at, entry) => At(at, name) == target ? delete(entry) : entry)));
    }

    IEnumerable<Deletion> AllAtOnce(TeardownRecord record, string name, Func<T, T> delete) =>
        Having(record, name, delete).IsEmpty ? [] : [new(PathTo(name), change(record, (_, entry) => delete(entry)))];

    ImmutableArray<Pointer> Having(TeardownRecord record, string name, Func<T, T> delete) =>
        [.. Entries(record).Where(each => !delete(each.Entry).Equals(each.Entry)).Select(each => At(each.At, name))];

    List<(Pointer At, T Entry)> Entries(TeardownRecord record)
    {
        var found = new List<(Pointer, T)>();
        change(record, (at, entry) =>
        {
            found.Add((at, entry));
            return entry;
        });
        return found;
    }

    string PathTo(string name) => path.Length == 0 ? name : $"{path}.{name}";

    static Pointer At(Pointer holder, string name) => name.Split('.').Aggregate(holder, (at, step) => at.Child(step));
}
