namespace FixScore.Analysis.Sensitivity;

/// <summary>How much of the variance of an output one input answers for. Estimates: a small index may come out a little below 0.</summary>
/// <param name="First">First-order index: the share of variance that would go if only this input were known. 0 to 1.</param>
/// <param name="FirstError">Its standard error.</param>
/// <param name="Total">Total index: the share that would stay if all others were known, interactions included. At least <paramref name="First"/>, 0 to 1.</param>
/// <param name="TotalError">Its standard error.</param>
public readonly record struct SobolIndex(double First, double FirstError, double Total, double TotalError);
