namespace FixScore.Disassembly.Search;

static class RouteFinder
{
    public static Route Find(TeardownCase source, RouteQuery query, CancellationToken cancellation) =>
        throw new InvalidOperationException("Being built.");
}
