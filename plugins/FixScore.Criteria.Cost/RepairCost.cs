using FixScore.Records;

namespace FixScore.Criteria.Cost;

/// <summary>What replacing a part costs, in the currency of the device's price.</summary>
/// <param name="Spare">The spare.</param>
/// <param name="Consumables">What is used up.</param>
/// <param name="Labour">Taking apart and putting together.</param>
/// <param name="Device">The price of the device.</param>
sealed record RepairCost(Quantity Spare, Quantity Consumables, Quantity Labour, Price Device)
{
    const decimal SecondsPerHour = 3600;

    public Quantity Total => Money.Plus(Money.Plus(Spare, Consumables), Labour);

    public Interval Share => Money.Share(Total, Device.Amount);

    public static RepairCost Of(RepairCostRatioFacts facts, Quantity spare, decimal rate, Price device)
    {
        var labour = Money.Times(Money.Plus(facts.Seconds, facts.Reassembly), rate);
        return new(spare, facts.Consumables, new(labour.Min / SecondsPerHour, labour.Max / SecondsPerHour), device);
    }
}
