package saddlebar.trace.statistics;

/** A value with its 95 % interval; low <= value <= high. */
public record Estimate(double value, double low, double high) {
}
