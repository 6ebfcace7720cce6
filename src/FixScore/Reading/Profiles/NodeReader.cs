using System.Collections.Immutable;

namespace FixScore.Reading.Profiles;

/// <summary>Reads the tree of nodes.</summary>
sealed class NodeReader(ProfileBinding binding)
{
    /// <summary>Stands in for a root that is missing.</summary>
    public static ProfileNode Placeholder(Scale scale) => new GroupNode { Id = "", Scale = scale, Aggregate = Aggregate.Minimum, Of = [] };

    public ProfileNode Read(ObjectReader node, Surroundings around)
    {
        var scale = OwnScale(node, around);
        var id = node.Slug("id");
        var over = node.Object("over", each => new OverReader(binding).Read(each, scale));
        if (over is not null && around.Over is not null)
            binding.Error(node.Pointer.Child("over"), "over-nested", "An 'over' stands under another.", "Spread over parts once.");
        var isNew = binding.Nodes.TryAdd(id, (null, node.Pointer, around.Over));
        if (!isNew && id.Length > 0)
            binding.Error(node.Pointer.Child("id"), "id-twice", "'{id}' is the id of another node.", "Give each node an id of its own.", ("id", id));
        var read = GroupOrLeaf(node, id, scale, over ?? around.Over);
        read = Common(node, read, around) with { Over = over };
        if (isNew) binding.Nodes[id] = (read, node.Pointer, around.Over);
        SourcesReader.Read(node, binding);
        return read;
    }

    ProfileNode GroupOrLeaf(ObjectReader node, string id, Scale scale, Over? over)
    {
        var isGroup = node.Has("of") || node.Has("aggregate");
        if (node.Has("criterion")) return Leaf(node, id, scale, over);
        if (isGroup) return Group(node, id, scale, over);
        binding.Error(node.Pointer, "node-form", "A node is a group ('aggregate' and 'of') or a leaf ('criterion').", "Add what it is.");
        return new LeafReader(binding).Read(node, id, scale, over);
    }

    LeafNode Leaf(ObjectReader node, string id, Scale scale, Over? over)
    {
        foreach (var name in (string[])["aggregate", "of"])
            if (node.Raw(name) is not null)
                binding.Error(node.Pointer.Child(name), "member-not-here", "A node that asks a criterion has no '{name}'.", "Keep either 'criterion' or 'aggregate' and 'of'.", ("name", name));
        return new LeafReader(binding).Read(node, id, scale, over);
    }

    GroupNode Group(ObjectReader node, string id, Scale scale, Over? over)
    {
        var aggregate = node.Word<Aggregate>("aggregate");
        var of = node.Objects("of", child => Read(child, new(scale, false, aggregate, over)), required: true, least: 1);
        var group = new GroupNode { Id = id, Scale = scale, Aggregate = aggregate, Of = of.IsDefault ? [] : of };
        GroupCheck.Check(group, node.Pointer, binding);
        return group;
    }

    ProfileNode Common(ObjectReader node, ProfileNode read, Surroundings around)
    {
        var gateOnly = node.WordOrNull<NodeRole>("role") is NodeRole.GateOnly;
        if (gateOnly && around.IsRoot)
            binding.Error(node.Pointer.Child("role"), "root-gate-only", "The root counts; it cannot be there for gates only.", "Remove the role.");
        node.Ids("evidence");
        return read with
        {
            Title = node.TextOrNull("title"),
            Weight = Weight(node, around.IsRoot, gateOnly),
            Note = node.TextOrNull("note"),
            Carry = node.Object("carry", carry => new Carry(carry.Whole("decimals", 0, 12), carry.Word<RoundingMode>("rounding"))),
            GateOnly = gateOnly,
        };
    }

    decimal? Weight(ObjectReader node, bool isRoot, bool gateOnly)
    {
        var weight = node.NumberOrNull("weight");
        if (isRoot || gateOnly)
        {
            if (node.Has("weight")) binding.Error(node.Pointer.Child("weight"), "weight-not-here", "The root and nodes for gates only have no weight.", "Remove it.");
            return null;
        }
        if (!node.Has("weight") && !node.Has("role")) binding.Error(node.Pointer, "missing-member", "The member '{name}' is missing.", "Add it.", ("name", "weight"));
        else if (weight <= 0) binding.Error(node.Pointer.Child("weight"), "weight-not-positive", "A weight is above 0.", "Remove the node, or make it gate-only.");
        return weight is > 0 ? weight : 1;
    }

    Scale OwnScale(ObjectReader node, Surroundings around)
    {
        var own = node.Object("scale", scale => new Scale(scale.Number("min"), scale.Number("max")));
        if (own is null) return around.Scale;
        if (around.Under != Aggregate.Sum)
            binding.Error(node.Pointer.Child("scale"), "scale-not-here", "Only a node under 'sum' may have a scale of its own.", "Remove it.");
        if (own.Min < own.Max) return own;
        binding.Error(node.Pointer.Child("scale"), "scale-reversed", "The scale goes from {min} to {max}.", "The best result has the most points.",
            ("min", own.Min), ("max", own.Max));
        return around.Scale;
    }
}

/// <summary>What a node is for.</summary>
enum NodeRole
{
    GateOnly,
}
