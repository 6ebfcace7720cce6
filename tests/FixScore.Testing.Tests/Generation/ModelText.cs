using System.Collections;
using System.Globalization;
using System.Reflection;
using System.Text;

namespace FixScore.Testing.Tests;

/// <summary>Everything a record holds, as text: member by member in the order of their names.</summary>
static class ModelText
{
    public static string Of(object record)
    {
        var text = new StringBuilder();
        Add(text, record);
        return text.ToString();
    }

    static void Add(StringBuilder text, object? value)
    {
        if (value is null) text.Append('-');
        else if (value is string or bool or Enum) text.Append(value);
        else if (value is IFormattable number && value.GetType().IsPrimitive | value is decimal or DateOnly or TimeSpan)
            text.Append(number.ToString(null, CultureInfo.InvariantCulture));
        else if (IsHollow(value)) text.Append('?');
        else if (value is IEnumerable list) AddList(text, list);
        else AddMembers(text, value);
    }

    static bool IsHollow(object value) =>
        value.GetType().GetProperty("IsDefault")?.GetValue(value) is true || value.GetType().GetProperty("IsRecorded")?.GetValue(value) is false;

    static void AddList(StringBuilder text, IEnumerable list)
    {
        text.Append('[');
        foreach (var each in list)
        {
            Add(text, each);
            text.Append(' ');
        }
        text.Append(']');
    }

    static void AddMembers(StringBuilder text, object value)
    {
        text.Append(value.GetType().Name.Split('`')[0]).Append('(');
        foreach (var member in value.GetType().GetProperties(BindingFlags.Public | BindingFlags.Instance).OrderBy(each => each.Name, StringComparer.Ordinal))
        {
            text.Append(member.Name).Append('=');
            Add(text, member.GetValue(value));
            text.Append(' ');
        }
        text.Append(")\n");
    }
}
