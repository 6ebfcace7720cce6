namespace FixScore.Pairing.Planning;

/// <summary>The least expected number of yes-or-no answers that tell apart things of given weights.</summary>
/// <remarks>Source: D. A. Huffman, A Method for the Construction of Minimum-Redundancy Codes, Proc. IRE 40 (1952).</remarks>
static class Huffman
{
    public static decimal Cost(IReadOnlyCollection<decimal> weights)
    {
        var queue = new PriorityQueue<decimal, decimal>(weights.Select(weight => (weight, weight)));
        var (cost, total) = (0m, weights.Sum());
        while (queue.Count > 1)
        {
            var joined = queue.Dequeue() + queue.Dequeue();
            cost += joined;
            queue.Enqueue(joined, joined);
        }
        return total == 0 ? 0 : cost / total;
    }
}
